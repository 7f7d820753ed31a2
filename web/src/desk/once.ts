import { Problem } from '../api.ts';

/** Does something once, with its button out of reach meanwhile; what went wrong is said beside it. */
export async function once(button: HTMLButtonElement, fault: HTMLElement, act: () => Promise<void>): Promise<void> {
  button.disabled = true;
  fault.textContent = '';
  try {
    await act();
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    fault.textContent = error.message;
  } finally {
    button.disabled = false;
  }
}
