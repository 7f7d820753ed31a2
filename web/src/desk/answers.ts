// What the server answers a signed-in person, and what it is told; made from its description of itself (web/api/openapi.json).
import type * as answers from '../generated/api.ts';

export type Me = answers.CallerJson;

export type ImportLine = answers.ImportJson;
export type ImportStateWord = ImportLine['state'];
export type ImportProgress = answers.ImportProgress;
export type ImportReport = answers.ImportReportJson;
export type FileProblem = answers.ImportProblem;
/** What was sent, and how long a file may be, in bytes. */
export type ImportList = answers.ImportListJson;

export type Preview = answers.PreviewJson;
export type PreviewColumn = answers.PreviewColumnJson;
export type PreviewRow = answers.PreviewRowJson;
export type Term = answers.TermJson;
/** The mapping file: header to term, null for a column that is kept and not used. */
export type MappingFile = answers.MappingFileShape;
/** What is said of a file when it is read. */
export interface Statements { mapping?: MappingFile; newTaxa: boolean; dryRun?: boolean }

export type Refusal = answers.RefusalJson;
export type UnknownName = answers.UnknownNameJson;
export type Undone = answers.UndoneJson;

export type RecordLine = answers.RecordJson;
export type Status = RecordLine['status'];
export type RecordPage = answers.RecordListJson;
export type RecordDetail = answers.RecordDetailJson;
export type KnownDoubt = answers.KnownDoubtJson;
export type Doubt = answers.DoubtJson;
export type HistoryStep = answers.HistoryJson;
export type Mark = answers.MarkJson;
export type Marks = answers.MarksJson;
export type QueueSummary = answers.QueueSummaryJson;
export type Decided = answers.DecisionJson;
/** What is decided: a status, a taxon that the record is identified as afresh, or both. */
export interface Verdict { status?: Status; taxon?: string; reason: string }

export type Edition = answers.FrozenEdition;
export type EditionList = answers.EditionListJson;
export type Scheme = answers.SchemeJson;
export type NamedPeriod = answers.NamedPeriod;
export type PeriodChange = answers.PeriodChangeJson;
export type Group = answers.GroupJson;
