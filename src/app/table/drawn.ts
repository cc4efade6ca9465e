// The display list the screen paints: the same as paper's, but for findings, whose signs keep their size on the screen.

import { drawTop } from '../../drawing/draw.ts';
import { LAYERS } from '../../drawing/display-list.ts';
import { remembered } from '../../drawing/remember.ts';
import type { Evaluation } from '../../engine/evaluation.ts';

const ON_SCREEN = LAYERS.filter((layer) => layer !== 'finding');

/** Made once for each evaluation, whoever asks. */
export const drawnForScreen = remembered((evaluation: Evaluation) => drawTop(evaluation, { layers: ON_SCREEN, labels: true }));
