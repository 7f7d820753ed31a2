// Where the device is, asked only when someone presses the button.

/** Why there is no position, in words. */
export const NO_POSITION: Record<number, string> = {
  1: 'The device may not tell this page where it is. Allow it in the settings of the browser, or write the square.',
  2: 'The device does not know where it is. Try outdoors, or write the square.',
  3: 'The device took too long to find where it is. Try again, or write the square.',
};

const NOT_OFFERED = 'This browser tells no position here: that needs a secure connection (https). Write the square instead.';

/** Latitude and longitude in degrees. Rejects with an error whose message says in words why not. */
export function position(): Promise<[number, number]> {
  return new Promise((tell, refuse) => {
    if (!('geolocation' in navigator) || !window.isSecureContext) return refuse(new Error(NOT_OFFERED));
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => tell([coords.latitude, coords.longitude]),
      ({ code }) => refuse(new Error(NO_POSITION[code] ?? NO_POSITION[2])),
      { enableHighAccuracy: true, timeout: 20_000, maximumAge: 60_000 });
  });
}
