// Wires the desk: who is signed in, where they stand, and the page of that place.
import '../look/colours.css';
import '../look/base.css';
import '../look/desk.css';
import '../look/imports.css';
import '../look/review.css';
import '../look/organise.css';
import { mountBanner } from '../panels/banner.ts';
import { byId, el } from '../elements.ts';
import type { Me } from './answers.ts';
import { makeAsk } from './ask.ts';
import type { Desk, Leave } from './desk.ts';
import { makeDoubtTitles } from './doubts.ts';
import { mountEditions } from './editions/page.ts';
import { mountImport } from './imports/page.ts';
import { mountImports } from './imports/overview.ts';
import { makeQuestions } from './questions.ts';
import { mountReview } from './review/page.ts';
import { forgetReasons } from './review/reasons.ts';
import { readRoute, writeRoute, type Route } from './route.ts';
import { mountScheme } from './scheme/page.ts';
import { makeSession } from './session.ts';
import { makeSignIn } from './signIn.ts';

const session = makeSession(window.sessionStorage);
const questions = makeQuestions(makeAsk(session));
const [work, ways, who] = [byId('work'), byId('ways'), byId('who')];
const page = el('div', { class: 'page' });
const signIn = makeSignIn(session, welcome);
let leave = (): void => {};
let hasPage = false;
let was: Element | null = null;

const desk: Desk = { session, questions, doubts: makeDoubtTitles(questions.doubts), go: (route) => { window.location.hash = writeRoute(route); } };

work.append(signIn.panel, page);
mountBanner(byId('banner'), byId('whose'));
window.addEventListener('hashchange', () => { if (session.token !== null) void show(); });
session.follow(turn);
turn(session.token !== null);
if (session.token !== null) void questions.me().then(welcome, () => { who.replaceChildren(signOutButton()); });

/** Hides the work behind the sign-in, or brings it back as it was. */
function turn(isIn: boolean): void {
  if (!isIn) was = document.activeElement;
  signIn.panel.hidden = isIn;
  ways.hidden = !isIn;
  page.toggleAttribute('data-waits', !isIn);
  if (!isIn) {
    who.replaceChildren(mapLink());
    signIn.open(hasPage);
  } else if (!hasPage) void show();
  else if (was instanceof HTMLElement) was.focus();
}

function welcome({ name, rights }: Me): void {
  const may = rights.length === 0 ? ' (may look only)' : rights.length === 1 ? ` (${rights[0]} only)` : '';
  who.replaceChildren(el('span', {}, `${name}${may}`), signOutButton(), mapLink());
}

function mapLink(): HTMLElement {
  return el('a', { href: '/' }, 'Map');
}

function signOutButton(): HTMLElement {
  return el('button', { type: 'button', class: 'link', click: signOut }, 'Sign out');
}

/** Leaves nothing of the records on the screen or in the page. */
function signOut(): void {
  forgetReasons(window.localStorage);
  session.signOut();
  window.location.reload();
}

async function show(): Promise<void> {
  hasPage = true;
  await desk.doubts.load();
  leave();
  const route = readRoute(window.location.hash);
  for (const link of ways.querySelectorAll('a')) {
    if (link.hash === (route.place === 'import' ? '#imports' : `#${route.place}`)) link.setAttribute('aria-current', 'page');
    else link.removeAttribute('aria-current');
  }
  page.className = `page ${route.place}`;
  page.replaceChildren();
  window.scrollTo(0, 0);
  leave = mount(route);
}

function mount(route: Route): Leave {
  switch (route.place) {
    case 'imports': return mountImports(page, desk);
    case 'import': return mountImport(page, desk, route.id);
    case 'review': return mountReview(page, desk, route.filter);
    case 'editions': return mountEditions(page, desk);
    case 'scheme': return mountScheme(page, desk);
  }
}
