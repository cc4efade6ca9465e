// Keep-outs and areas of her own: draw one on the table, or add it here and type its measures.

import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import type { ById, DrawnArea, KeepOut } from '../../model/plan.ts';
import { zoomToStretch } from '../../session/look.ts';
import { keepTyped } from '../../session/typing.ts';
import type { ShapeUse } from '../../session/top/drawing.ts';
import { type Outline, movedOutline, outlineOf } from '../../session/top/outlines.ts';
import { addShape, nameShape, removeShape, typeKeepOutClearance, typeOutline } from '../../session/top/shapes.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import { useSession, useTheSession } from '../use-session.ts';
import { LengthField } from '../words/LengthField.tsx';
import { Aside } from '../slip/Slip.tsx';

const KINDS: readonly { readonly id: Outline['kind']; readonly name: string }[] = [
  { id: 'rectangle', name: 'Rectangle' },
  { id: 'round', name: 'Round' },
  { id: 'shape', name: 'Straight sides' },
];

const WHAT: { readonly [use in ShapeUse]: { readonly none: string; readonly draw: string } } = {
  keepOuts: { none: 'Nothing to keep out of. Draw round an applique, and no stitching goes in.', draw: 'Draw a keep-out' },
  drawnAreas: { none: 'No area of your own. Draw one where a motif runs over several blocks.', draw: 'Draw an area' },
};

export function ShapesForm({ use }: { readonly use: ShapeUse }) {
  const session = useTheSession();
  const shapes: ById<KeepOut | DrawnArea> = useSession((state) => state.evaluation.plan.top[use]);
  const drawing = useSession((state) => state.drawing);
  const laid = useSession((state) => state.evaluation.top);
  const active = drawing?.use === use ? drawing.kind : undefined;
  const begin = (kind: Outline['kind']) => session.setState({ drawing: active === kind ? undefined : { use, kind, outline: undefined, corners: [] } });
  const addInMiddle = () => {
    const side = Math.max(1, Math.round(Math.min(laid.width, laid.height) / 4));
    addShape(session, use, { kind: 'rectangle', x: Math.round((laid.width - side) / 2), y: Math.round((laid.height - side) / 2), width: side, height: side });
  };
  return (
    <div className="top-form">
      {Object.keys(shapes).length === 0 && <Aside>{WHAT[use].none}</Aside>}
      {Object.entries(shapes).map(([id, shape]) => <ShapeForm key={id} use={use} id={id} name={shape.name} outline={shape.outline} clearance={'clearance' in shape ? shape.clearance : undefined} />)}
      <div className="top-draw" role="group" aria-label={WHAT[use].draw}>
        {KINDS.map(({ id, name }) => <Button key={id} className={active === id ? 'button pressed' : 'button'} aria-pressed={active === id} onPress={() => begin(id)}>{name}</Button>)}
        <Button className="button" onPress={addInMiddle}>Add one in the middle</Button>
      </div>
      {active && <p className="aside" role="status">{SAYS[active]}</p>}
    </div>
  );
}

const SAYS: { readonly [kind in Outline['kind']]: string } = {
  rectangle: 'Pull from one corner to the other on the quilt. Escape gives it up.',
  round: 'Pull from the middle to the edge on the quilt. Escape gives it up.',
  shape: 'Tap the corners one after the other, and the first again to close. Escape gives it up.',
};

interface ShapeFormProps {
  readonly use: ShapeUse;
  readonly id: string;
  readonly name: string;
  readonly outline: string;
  readonly clearance: number | undefined;
}

function ShapeForm({ use, id, name, outline, clearance }: ShapeFormProps) {
  const session = useTheSession();
  const [typed, setTyped] = useState<string>();
  const shape = outlineOf(outline);
  const keep = () => keepTyped(session);
  return (
    <fieldset className="top-border">
      <legend>{name}</legend>
      <label className="typed-field">
        <span>Name</span>
        <span className="typed-row"><input type="text" value={typed ?? name} autoComplete="off" onChange={({ target }) => setTyped(target.value)} onBlur={() => { if (typed !== undefined) nameShape(session, use, id, typed); setTyped(undefined); }} onKeyDown={({ key, currentTarget }) => { if (key === 'Enter') currentTarget.blur(); }} /></span>
      </label>
      {shape ? <Measures shape={shape} onShape={(next) => typeOutline(session, use, id, next)} onKeep={keep} of={name} /> : <Aside>Its outline cannot be read.</Aside>}
      {use === 'keepOuts' && <LengthField label={`stay away from ${name} by`} least={0} most={12} value={clearance ?? 0} onValue={(value) => typeKeepOutClearance(session, id, value)} onKeep={keep} />}
      <div className="top-draw">
        {shape && <Button className="button" aria-label={`Show ${name} large`} onPress={() => zoomToStretch(session, stretchOf(shape))}>Show it large</Button>}
        <Button className="button" aria-label={`Take away ${name}`} onPress={() => removeShape(session, use, id)}>Take it away</Button>
      </div>
    </fieldset>
  );
}

function Measures({ shape, onShape, onKeep, of }: { readonly shape: Outline; readonly onShape: (shape: Outline) => void; readonly onKeep: () => void; readonly of: string }) {
  const { x, y, width, height } = stretchOf(shape);
  const field = { most: 400, onKeep };
  return (
    <div className="top-pair">
      <LengthField {...field} label={`${of}: from the left edge`} least={-400} value={x} onValue={(value) => onShape(movedOutline(shape, value - x, 0))} />
      <LengthField {...field} label={`${of}: from the top edge`} least={-400} value={y} onValue={(value) => onShape(movedOutline(shape, 0, value - y))} />
      {shape.kind === 'rectangle' && <LengthField {...field} label={`${of}: width`} least={0.25} value={width} onValue={(value) => onShape({ ...shape, width: value })} />}
      {shape.kind === 'rectangle' && <LengthField {...field} label={`${of}: height`} least={0.25} value={height} onValue={(value) => onShape({ ...shape, height: value })} />}
      {shape.kind === 'round' && <LengthField {...field} label={`${of}: across`} least={0.25} value={shape.across} onValue={(value) => onShape({ ...shape, x: shape.x + (value - shape.across) / 2, y: shape.y + (value - shape.across) / 2, across: value })} />}
    </div>
  );
}

function stretchOf(shape: Outline): { readonly x: number; readonly y: number; readonly width: number; readonly height: number } {
  switch (shape.kind) {
    case 'rectangle':
      return shape;
    case 'round':
      return { x: shape.x - shape.across / 2, y: shape.y - shape.across / 2, width: shape.across, height: shape.across };
    case 'shape': {
      const { minX, minY, maxX, maxY } = boundsOf(shape.path);
      return { x: minX, y: minY, width: maxX - minX, height: maxY - minY };
    }
  }
}
