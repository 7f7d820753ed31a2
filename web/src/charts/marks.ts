// The parts of Observable Plot that the charts use: all that the browser fetches of it.
export { axisX, axisY, dot, gridX, gridY, line, plot, rectY, ruleX, ruleY, text } from '@observablehq/plot';
