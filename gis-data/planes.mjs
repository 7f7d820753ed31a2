// The planes of the national grids, for drawing and for finding squares only. The shifts are the seven-parameter (Helmert) ones published
// in the EPSG dataset (operations 1314, 1954 and 1138), good to a few metres: enough for a coast of 10 m, not for placing records.
import proj4 from 'proj4';

// proj4 wants the position-vector rotations in arc seconds and the scale in parts per million, as EPSG gives them.
const BRITISH = '+proj=tmerc +lat_0=49 +lon_0=-2 +k=0.9996012717 +x_0=400000 +y_0=-100000 +a=6377563.396 +b=6356256.909'
  + ' +towgs84=446.448,-125.157,542.06,0.150,0.247,0.842,-20.489 +units=m +no_defs';
const IRISH = '+proj=tmerc +lat_0=53.5 +lon_0=-8 +k=1.000035 +x_0=200000 +y_0=250000 +a=6377340.189 +rf=299.3249646'
  + ' +towgs84=482.5,-130.6,564.6,-1.042,-0.214,-0.631,8.15 +units=m +no_defs';
const CHANNEL_ISLANDS = '+proj=utm +zone=30 +ellps=intl +towgs84=-86,-96,-120,0,0,0,0 +units=m +no_defs';

const forward = (definition) => {
  const shift = proj4('WGS84', definition);
  return (lonLat) => shift.forward(lonLat);
};

/** Longitude and latitude (WGS84, degrees) to easting and northing in metres. */
export const toBritish = forward(BRITISH);
export const toIrish = forward(IRISH);
export const toChannelIslands = forward(CHANNEL_ISLANDS);
