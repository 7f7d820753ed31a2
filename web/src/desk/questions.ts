// Every question that the desk asks, in one list.
import type {
  Decided, Edition, EditionList, Group, ImportLine, ImportList, KnownDoubt, MappingFile, Me, NamedPeriod, Preview, QueueSummary, RecordDetail, RecordLine, RecordPage, Refusal, Scheme, Statements, Undone, UnknownName, Verdict,
} from './answers.ts';
import type { Ask } from './ask.ts';
import type { Filter } from './route.ts';

const part = encodeURIComponent;

export type Questions = ReturnType<typeof makeQuestions>;

export function makeQuestions(ask: Ask) {
  const one = (id: string) => `/imports/${part(id)}`;
  return {
    doubts: async () => (await ask.get<{ doubts: KnownDoubt[] }>('/doubts')).doubts,
    me: () => ask.get<Me>('/me'),
    imports: (signal?: AbortSignal) => ask.get<ImportList>('/imports', signal),
    import: (id: string, signal?: AbortSignal) => ask.get<ImportLine>(one(id), signal),
    preview: (id: string, said: Statements, signal?: AbortSignal) => ask.post<Preview>(`${one(id)}/preview`, said, signal),
    start: (id: string, said: Statements) => ask.post<ImportLine>(`${one(id)}/start`, said),
    events: (id: string, signal: AbortSignal) => ask.stream(`${one(id)}/events`, signal),
    refusals: (id: string, after: number, limit: number, signal?: AbortSignal) =>
      ask.get<{ total: number; refusals: Refusal[] }>(`${one(id)}/refusals?after=${after}&limit=${limit}`, signal),
    refusedFile: (id: string) => ask.file(`${one(id)}/refusals.csv`),
    mapping: (id: string) => ask.get<MappingFile>(`${one(id)}/mapping.json`),
    names: async (id: string, signal?: AbortSignal) => (await ask.get<{ names: UnknownName[] }>(`${one(id)}/names`, signal)).names,
    accept: (name: string, taxon: string) => ask.post<void>('/names', { name, taxon }),
    retry: (id: string) => ask.post<ImportLine>(`${one(id)}/retry`),
    /** Takes an import back, or a file away that is no part of the data (then nothing is told). */
    takeBack: (id: string) => ask.remove<Undone>(one(id)),

    editions: (signal?: AbortSignal) => ask.get<EditionList>('/editions', signal),
    freeze: (title: string | null, reason: string) => ask.post<Edition>('/editions', { title, reason }),
    scheme: (signal?: AbortSignal) => ask.get<Scheme>('/scheme', signal),
    groups: async (signal?: AbortSignal) => (await ask.get<{ groups: Group[] }>('/groups', signal)).groups,
    /** `seen` is the newest change that the person saw: nothing is changed where somebody else was faster. */
    setPeriods: (periods: readonly NamedPeriod[], gapsAreMeant: boolean, reason: string, seen: number) => ask.put<Scheme>('/scheme/periods', { periods, gapsAreMeant, reason, seen }),
    restorePeriods: (number: number, reason: string, seen: number) => ask.post<Scheme>('/scheme/periods/restore', { number, reason, seen }),

    summary: (signal?: AbortSignal) => ask.get<QueueSummary>('/reviews/summary', signal),
    queue: (filter: Filter, limit: number, after: string | null, signal?: AbortSignal) =>
      ask.get<RecordPage>(`/records?order=weight&limit=${limit}${filterText(filter)}${after === null ? '' : `&after=${part(after)}`}`, signal),
    record: (id: string, signal?: AbortSignal) => ask.get<RecordDetail>(`/records/${part(id)}`, signal),
    decide: ({ id, version }: RecordLine, verdict: Verdict) => ask.post<RecordDetail>(`/records/${part(id)}/reviews`, { ...verdict, version }),
    decideMany: (records: readonly RecordLine[], verdict: Verdict) =>
      ask.post<Decided>('/reviews', { ...verdict, records: records.map(({ id, version }) => ({ id, version })) }),
    sheet: (recorder: string) => ask.file(`/recorders/${part(recorder)}/sheet.html`),
    reverse: (decision: number) => ask.remove<Decided>(`/reviews/${decision}`),
  };
}

function filterText({ doubt, taxon, batch }: Filter): string {
  return Object.entries({ doubt, taxon, batch }).map(([name, value]) => value === null ? '' : `&${name}=${part(value)}`).join('');
}
