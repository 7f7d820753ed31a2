// What the server answers a signed-in person; see /reference for every field.

export interface Me { name: string; rights: string[] }

export type ImportStateWord = 'received' | 'queued' | 'running' | 'done' | 'failed' | 'undone';

export interface ImportProgress { rows: number; fraction: number; rowsPerSecond: number; secondsLeft: number | null }

export interface ImportReport {
  read: number;
  accepted: number;
  updated: number;
  unchanged: number;
  refused: number;
  seconds: number | null;
  form: string | null;
  doubts: Record<string, number>;
  mapping: Record<string, string>;
  dryRun: boolean;
  undoneAt: string | null;
  notes: string[];
}

export interface FileProblem { what: string; where: string; mend: string }

export interface ImportLine {
  id: string;
  batch: number | null;
  file: string;
  dataset: string;
  by: string | null;
  at: string;
  bytes: number | null;
  state: ImportStateWord;
  progress: ImportProgress | null;
  report: ImportReport | null;
  problem: FileProblem | null;
}

/** What was sent, and how long a file may be, in bytes. */
export interface ImportList { imports: ImportLine[]; mostBytes: number }

export interface PreviewColumn { name: string; term: string | null; use: string; samples: string[] }

export interface Term { name: string; about: string }

export interface PreviewRow {
  row: number;
  cells: string[];
  taxon: string | null;
  square: string | null;
  dates: string | null;
  doubts: string[];
  refused: { field: string; reason: string } | null;
}

export interface Preview {
  form: string;
  columns: PreviewColumn[];
  terms: Term[];
  rows: PreviewRow[];
  counts: { read: number; accepted: number; refused: number };
  dateOrder: 'notStated' | 'dmy' | 'mdy';
  problem: FileProblem | null;
}

/** The mapping file: header to term, null for a column that is kept and not used. */
export interface MappingFile { columns: Record<string, string | null>; defaults: Record<string, string>; dateOrder?: 'dmy' | 'mdy' }

/** What is said of a file when it is read. */
export interface Statements { mapping?: MappingFile; newTaxa: boolean; dryRun?: boolean }

export interface Refusal { row: number; line: number; field: string; value: string; reason: string; text: string }

export interface UnknownName { name: string; rows: number; suggestions: { taxon: string; scientificName: string; matched: string }[] }

export interface Undone { batch: number; removed: number; restored: number; changedLater: number; repeatedBy: number[] }

export type Status = 'unreviewed' | 'confirmed' | 'doubtful' | 'rejected';

export interface RecordLine {
  id: string;
  version: string;
  dataset: string;
  batch: number;
  row: number;
  taxon: string;
  scientificName: string;
  sentTaxon: string | null;
  square: string;
  grid: string;
  size: string;
  latitude: number;
  longitude: number;
  uncertaintyMetres: number | null;
  first: string;
  last: string;
  present: boolean;
  status: Status;
  sentStatus: Status | null;
  doubts: string[];
  weight: number;
  recorder: string | null;
  determiner: string | null;
  stage: string | null;
  sex: string | null;
  count: number | null;
  lengthMm: number | null;
  evidence: string | null;
  host: string | null;
  behaviour: string | null;
  site: string | null;
  onCompleteList: boolean;
}

export interface RecordPage { records: RecordLine[]; next: string | null; note: string | null }

export interface KnownDoubt { code: string; title: string; weight: number; serious: boolean }

export interface Doubt { code: string; title: string; weight: number; words: string; why: string; help: string }

export interface HistoryStep {
  decision: number;
  at: string;
  by: string;
  reason: string;
  status: Status | null;
  taxon: string | null;
  reverses: number | null;
  holds: boolean;
}

export interface Mark { stage: string | null; words: string }

export interface Marks {
  marks: Mark[];
  evidence: Mark[];
  confusedWith: { taxon: string; scientificName: string; vernacularName: string | null; marks: Mark[] }[];
  aggregate: string | null;
}

export interface RecordDetail { record: RecordLine; sent: Record<string, string>; doubts: Doubt[]; history: HistoryStep[]; marks: Marks | null }

export interface QueueSummary { waiting: number; byDoubt: { code: string; title: string; weight: number; serious: boolean; records: number }[] }

export interface Decided { decision: number | null; changed: number; missing: string[]; changedMeanwhile: string[]; decidedLater: string[] }

/** What is decided: a status, a taxon that the record is identified as afresh, or both. */
export interface Verdict { status?: Status; taxon?: string; reason: string }
