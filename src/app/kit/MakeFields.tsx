// How a template is made: how thick the acrylic is, and which faces carry grips; with the caution that belongs there.

import { thicknessFit } from '../../check/rules/thickness.ts';
import type { Foot, Grips } from '../../model/plan.ts';
import { LengthField } from '../words/LengthField.tsx';
import { useFineLengths } from '../words/lengths.ts';
import { Aside } from '../slip/Slip.tsx';
import { Choices, Taps } from './Choices.tsx';

export const GRIPS: readonly { readonly value: Grips; readonly name: string }[] = [
  { value: 'none', name: 'none' },
  { value: 'one-face', name: 'under one face' },
  { value: 'both-faces', name: 'both faces' },
];

export interface MakeFieldsProps {
  readonly thickness: number;
  readonly grips: Grips;
  readonly foot: Foot | undefined;
  readonly onThickness: (thickness: number) => void;
  readonly onGrips: (grips: Grips) => void;
  readonly onKeep?: () => void;
  readonly onGiveUp?: () => void;
}

export function MakeFields({ thickness, grips, foot, onThickness, onGrips, onKeep, onGiveUp }: MakeFieldsProps) {
  const fine = useFineLengths();
  const fit = foot && thicknessFit(thickness, foot.shank);
  const tap = (value: number) => ({
    name: fine(value),
    taken: thickness === value,
    onTap: () => {
      onThickness(value);
      onKeep?.();
    },
  });
  return (
    <>
      <div className="fields beside">
        <LengthField label="Thickness" value={thickness} least={1 / 64} most={2} onValue={onThickness} {...(onKeep && { onKeep })} {...(onGiveUp && { onGiveUp })} />
        <Taps label="Usual" taps={[tap(1 / 8), tap(1 / 4)]} />
      </div>
      {foot && fit && fit.fit !== 'fits' && (
        <p className="caution">
          {fit.fit === 'too-thin' ? `${foot.name} can ride up on it.` : `${foot.name} may not clear it.`} With a {foot.shank} shank {fit.usual} is usual. Your machine’s manual decides.
        </p>
      )}
      <Choices label="Grips" choices={GRIPS} value={grips} onChoose={onGrips} />
      {grips === 'one-face' && <Aside>They are under it while its etched face is up; face down, the template slides.</Aside>}
    </>
  );
}
