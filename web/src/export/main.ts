// Wires the page of exports: one query, a form that changes it, and what it gives.
import '../look/colours.css';
import '../look/base.css';
import '../look/desk.css';
import '../look/export.css';
import { makeAddressStore } from '../addressStore.ts';
import { makeSession } from '../desk/session.ts';
import { byId } from '../elements.ts';
import { mountBanner } from '../panels/banner.ts';
import { mountCitation } from './citation.ts';
import { mountDownload } from './download.ts';
import { mountForm } from './form.ts';
import { fromHash, toHash, type ExportQuery } from './query.ts';
import { mountSize } from './size.ts';
import { mountSnippets } from './snippetBox.ts';
import { makeTell } from './tell.ts';
import type { ExportStore } from './store.ts';

const store: ExportStore = makeAddressStore<ExportQuery>(window.location, window.history, { write: toHash, read: fromHash, passing: [] });
const tell = makeTell(makeSession(window.sessionStorage));
const result = byId('result');

mountBanner(byId('banner'), byId('whose'));
mountForm(byId('ask'), store, tell);
const size = mountSize(result, store, tell);
mountDownload(result, store, tell, size);
mountSnippets(result, store, window.location.origin);
mountCitation(result, store, tell);
store.begin();
