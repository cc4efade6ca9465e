// How a top is made, said in short sentences.

import type { Plan } from '../../model/plan.ts';
import type { WriteLength } from './lengths.ts';

export function describeTop({ top, sheets }: Plan, length: WriteLength): readonly string[] {
  const { blocks, panel, borders } = top;
  const said: string[] = [];
  if (blocks) {
    const { rows, columns, size, setting, sashing, cornerstones } = blocks;
    const whole = setting === 'on-point' ? rows * columns + (rows - 1) * (columns - 1) : rows * columns;
    const measure = size[0] === size[1] ? `${length(size[0])} square` : `${length(size[0])} by ${length(size[1])}`;
    said.push(`${whole === 1 ? 'One block' : `${whole} blocks`}, ${measure}, set ${setting === 'on-point' ? 'on point' : 'straight'}.`);
    if (sashing > 0) said.push(`Sashing ${length(sashing)} wide${cornerstones ? ', with cornerstones' : ''}.`);
  } else if (panel) {
    said.push(`One piece of cloth, ${length(panel.size[0])} by ${length(panel.size[1])}.`);
  }
  if (borders.length > 0) {
    const widths = borders.map(({ width, corners }) => `${length(width)}, ${CORNERS[corners]}`);
    said.push(borders.length === 1 ? `One border: ${widths[0]!}.` : `${borders.length} borders, from the inside: ${widths.join('; ')}.`);
  }
  const chosen = Object.values(sheets).filter((sheet) => sheet.chosen).length;
  said.push(chosen === 0 ? 'No sheet is chosen yet, so nothing is sewn.' : chosen === 1 ? 'One tracing sheet is sewn.' : `${chosen} tracing sheets are sewn.`);
  return said;
}

const CORNERS = { butted: 'butted corners', mitred: 'mitred corners', squares: 'corner squares' } as const;
