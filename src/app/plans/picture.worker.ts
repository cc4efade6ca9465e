// Makes the pictures of plans beside the page, so that the page stays quick: a plan's text comes in, its picture goes out.

import { expose } from 'comlink';
import { drawTop } from '../../drawing/draw.ts';
import { setOut } from '../../engine/evaluate.ts';
import { readPlan } from '../../model/codec.ts';
import { clothFor } from '../table/cloth.ts';
import { type PlanPicture, pictureOf } from './picture.ts';

const painter = {
  /** Nothing for a text that is no plan. */
  picture: (text: string): PlanPicture | undefined => {
    const read = readPlan(text);
    if (!read.ok) return undefined;
    const evaluation = setOut(read.value);
    return pictureOf(drawTop(evaluation, { layers: ['ground', 'needle'] }), clothFor(evaluation));
  },
};

export type PicturePainter = typeof painter;

expose(painter);
