// All that is measured of a top, in the order in which it is pieced.

import { SlipPart } from '../slip/Slip.tsx';
import { BedChoice } from './BedChoice.tsx';
import { BordersForm, ClearancesForm } from './BordersForm.tsx';
import { MiddleForm } from './MiddleForm.tsx';
import { ShapesForm } from './ShapesForm.tsx';
import './top.css';

export function TopForms() {
  return (
    <>
      <SlipPart title="The middle">
        <MiddleForm />
        <BedChoice />
      </SlipPart>
      <SlipPart title="Borders, from the inside out"><BordersForm /></SlipPart>
      <SlipPart title="How far stitching stays"><ClearancesForm /></SlipPart>
      <SlipPart title="Keep-outs"><ShapesForm use="keepOuts" /></SlipPart>
      <SlipPart title="Areas of your own"><ShapesForm use="drawnAreas" /></SlipPart>
    </>
  );
}
