// An outline of the quilter's own, pasted as path data from a drawing. What cannot be cut is refused with the place, shown in the picture.

import { useId } from 'react';
import { boundsOf, grownBounds, sizeOfBounds, unionBounds } from '../../geometry/bounds.ts';
import { writePathData } from '../../geometry/svg/write.ts';
import type { DrawingUnit, OwnOutlineProblem } from '../../session/kit/own-outline.ts';
import { Choices } from './Choices.tsx';

const UNITS: readonly { readonly value: DrawingUnit; readonly name: string }[] = [
  { value: 'in', name: 'inches' },
  { value: 'cm', name: 'cm' },
  { value: 'mm', name: 'mm' },
  { value: 'px', name: 'pixels, 96 to the inch' },
];

export interface OutlineFormProps {
  readonly data: string;
  readonly unit: DrawingUnit;
  readonly problem: OwnOutlineProblem | undefined;
  readonly onData: (data: string) => void;
  readonly onUnit: (unit: DrawingUnit) => void;
}

export function OutlineForm({ data, unit, problem, onData, onUnit }: OutlineFormProps) {
  const id = useId();
  const wrong = data.trim() === '' ? undefined : problem;
  return (
    <div className="sizes">
      <div className="typed-field">
        <label htmlFor={id}>Path data</label>
        <div className="typed-row words">
          <textarea id={id} rows={5} spellCheck={false} value={data} placeholder="M 0 0 H 4 V 4 H 0 Z" aria-invalid={wrong !== undefined} aria-describedby={`${id}-said`} onChange={({ target }) => onData(target.value)} />
        </div>
        <p id={`${id}-said`} className={wrong ? 'typed-wrong' : 'typed-hint'}>
          {wrong ? wrong.message : 'Paste what stands between the quotes of d="…" in an SVG drawing. With several closed paths, the one round all others is the outline and the rest are windows.'}
        </p>
      </div>
      <Choices label="Its numbers are" choices={UNITS} value={unit} onChoose={onUnit} />
    </div>
  );
}

/** What was pasted, as far as it can be drawn, with the place where it goes wrong. */
export function RefusedPicture({ problem }: { readonly problem: OwnOutlineProblem }) {
  if (problem.paths.length === 0) return null;
  const around = unionBounds(problem.paths.map(boundsOf));
  const size = Math.max(sizeOfBounds(around).width, sizeOfBounds(around).height);
  const box = grownBounds(around, size / 12);
  const { width, height } = sizeOfBounds(box);
  return (
    <svg className="template-picture refused" viewBox={`${box.minX} ${box.minY} ${width} ${height}`} role="img" aria-label={`The outline as it was pasted. ${problem.message}`}>
      <path className="edge" d={problem.paths.map(writePathData).join('')} />
      {problem.at && (
        <>
          <circle className="wrong-place" cx={problem.at.x} cy={problem.at.y} r={size / 22} />
          <circle className="wrong-place dot" cx={problem.at.x} cy={problem.at.y} r={size / 130} />
        </>
      )}
    </svg>
  );
}
