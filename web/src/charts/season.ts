// Records by week of the year, a row of bars for each stage on one axis; under them the weeks in which the list expects the stage.
import type { StageWeeks } from '../api.ts';
import { chart } from './chart.ts';

export interface StageSeason extends StageWeeks { expected: readonly [number, number][] }

const ROW = 62, AXIS = 22, TOP = 4;
/** The ISO week of the middle of each month. */
const MONTHS: [number, string][] = [[3, 'Jan'], [7, 'Feb'], [11, 'Mar'], [16, 'Apr'], [20, 'May'], [24, 'Jun'], [29, 'Jul'], [33, 'Aug'], [37, 'Sep'], [42, 'Oct'], [46, 'Nov'], [51, 'Dec']];

interface Bar { stage: string; week: number; share: number; count: number }

/** Each row has its own height, since a stage that is seldom recorded has a season too; its number of records stands beside its name. */
export function seasonChart(stages: StageSeason[], said: string): HTMLElement {
  const name = ({ stage }: StageSeason) => stage ?? 'stage not stated';
  const bars = stages.flatMap((s): Bar[] => s.weeks.map((count, i) => ({ stage: name(s), week: i + 1, count, share: count / Math.max(1, ...s.weeks) })).filter((bar) => bar.count > 0));
  const spans = stages.flatMap((s) => s.expected.map(([from, to]) => ({ stage: name(s), from, to })));
  const row = { fy: 'stage' };
  return chart({ kind: 'season', said, height: stages.length * ROW + AXIS + TOP }, ({ axisX, rectY, ruleY, text }) => ({
    marginLeft: 8, marginRight: 8, marginTop: TOP, marginBottom: AXIS,
    fy: { domain: stages.map(name), axis: null, padding: 0 },
    x: { domain: [0.5, 53.5] },
    y: { domain: [-0.16, 1.6], axis: null },
    marks: [
      axisX(MONTHS.map(([week]) => week), { tickSize: 0, label: null, tickFormat: (week: number) => MONTHS.find(([at]) => at === week)![1], facetAnchor: 'bottom' }),
      rectY(bars, { ...row, x1: (b: Bar) => b.week - 0.5, x2: (b: Bar) => b.week + 0.5, y: 'share', insetRight: 0.5, className: 'bar', title: (b: Bar) => `${b.stage}, week ${b.week}: ${b.count}` }),
      ruleY(stages.map((s) => ({ stage: name(s) })), { ...row, y: 0, className: 'rule' }),
      ruleY(spans, { ...row, y: -0.1, x1: (s: { from: number }) => s.from - 0.5, x2: (s: { to: number }) => s.to + 0.5, className: 'span' }),
      text(stages.map((s) => ({ stage: name(s), words: `${name(s)}  n ${s.records}` })), { ...row, text: 'words', frameAnchor: 'top-left', dy: 3, className: 'label' }),
    ],
  }));
}
