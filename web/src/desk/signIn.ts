// The sign-in: a token, pasted. When one is refused in the middle of the work, the work waits behind it as it was.
import { Problem } from '../api.ts';
import { el } from '../elements.ts';
import type { Me } from './answers.ts';
import { makeAsk } from './ask.ts';
import { makeQuestions } from './questions.ts';
import { makeSession, type Session } from './session.ts';

export interface SignIn {
  panel: HTMLElement;
  /** Says why it is asked, and takes the cursor. */
  open(isAgain: boolean): void;
}

export function makeSignIn(session: Session, welcome: (me: Me) => void): SignIn {
  const why = el('p', { class: 'fault', role: 'alert' });
  const input = el('input', { id: 'token', type: 'password', autocomplete: 'off', spellcheck: 'false', required: true, 'aria-describedby': 'token-about' });
  const button = el('button', { type: 'submit', class: 'main' }, 'Sign in');
  const panel = el('section', { class: 'sign-in', 'aria-labelledby': 'sign-in-title', hidden: true },
    el('h2', { id: 'sign-in-title' }, 'Sign in'),
    el('p', { class: 'opening' }, 'The desk is where records are sent in and reviewed. The map itself is open to all.'),
    el('form', { submit: tryToken }, el('label', { for: 'token' }, 'Your token'), input, button, why),
    el('p', { class: 'note', id: 'token-about' },
      'Whoever runs the server makes one for you with ', el('code', {}, 'rangemap token create NAME'), '. It is kept in this tab only, until you sign out or close the tab.'),
    el('p', { class: 'caution' }, el('strong', {}, 'With care: '),
      'records can hold people’s names and the exact places of species that must not be disturbed. Do not leave the desk open on a shared screen, and pass on no more than you need.'));

  async function tryToken(event: Event): Promise<void> {
    event.preventDefault();
    const token = input.value.trim();
    why.textContent = '';
    button.disabled = true;
    try {
      const me = await whoHas(token);
      input.value = '';
      welcome(me);
      session.signIn(token);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      why.textContent = error.status === 401 ? 'This token is not known here, or it no longer counts. Is it whole? It begins with “rangemap-”.' : error.message;
      input.focus();
    } finally {
      button.disabled = false;
    }
  }

  return {
    panel,
    open(isAgain) {
      why.textContent = isAgain ? 'Your token is no longer taken. Sign in again: all that you had typed is still there.' : '';
      input.focus();
    },
  };
}

/** Asks with a token that is not signed in yet, so that a wrong one disturbs nothing. */
function whoHas(token: string): Promise<Me> {
  const trial = makeSession({ getItem: () => token, setItem: () => {}, removeItem: () => {} });
  return new Promise((found, failed) => {
    trial.follow((isIn) => { if (!isIn) failed(new Problem('Not known.', '', 401)); });
    makeQuestions(makeAsk(trial)).me().then(found, failed);
  });
}
