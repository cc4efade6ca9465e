// The board: things cut from acrylic as pictures, all at one scale, to pick one out of.

import type { ReactNode } from 'react';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { sizeOfBounds } from '../../geometry/bounds.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import { Said } from '../words/Said.tsx';
import { type PictureFoot, TemplatePicture, pictureBox } from './TemplatePicture.tsx';
import { type Size, useSize } from './use-size.ts';

export interface BoardThing {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  /** Undefined for what cannot be drawn; then `about` says why. */
  readonly shape: TemplateShape | undefined;
  readonly quiet?: boolean;
}

export interface BoardProps {
  readonly label: string;
  readonly things: readonly BoardThing[];
  readonly picked: string | undefined;
  readonly onPick: (id: string) => void;
  readonly foot: PictureFoot | undefined;
  /** Above the pictures. */
  readonly head: ReactNode;
  /** After them. */
  readonly children?: ReactNode;
}

export function Board({ label, things, picked, onPick, foot, head, children }: BoardProps) {
  const [place, size] = useSize<HTMLDivElement>();
  const boxes = things.map(({ shape }) => shape && sizeOfBounds(pictureBox(shape, foot)));
  const scale = size && scaleFor(size, boxes);
  return (
    <section className="board" aria-label={label} ref={place}>
      {head}
      {scale !== undefined && (
        <div className="board-things" ref={(element) => element?.style.setProperty('--inch', `${scale}px`)}>
          <ListBox
            className="board-list"
            aria-label={label}
            layout="grid"
            selectionMode="single"
            selectionBehavior="replace"
            selectedKeys={picked === undefined ? [] : [picked]}
            onSelectionChange={(keys) => {
              const [id] = keys === 'all' ? [] : [...keys];
              if (id !== undefined) onPick(String(id));
            }}
            items={things}
            dependencies={[scale, foot]}
          >
            {({ id, name, about, shape, quiet }) => (
              <ListBoxItem id={id} textValue={name} className={quiet ? 'board-thing quiet' : 'board-thing'}>
                {shape && <TemplatePicture shape={shape} foot={foot} scale={scale} />}
                <span className="thing-name">{name}</span>
                <span className="thing-about"><Said>{about}</Said></span>
              </ListBoxItem>
            )}
          </ListBox>
          {children}
        </div>
      )}
    </section>
  );
}

/** CSS pixels to the inch at the most; pictures of everyday templates then stand three or four in a row on a desk's screen. */
const USUAL_SCALE = 27;
const LEAST_SCALE = 11;

/** One scale for all, so that the widest takes no more than two fifths of the board, but nothing is too small to be told apart. */
function scaleFor({ width }: Size, boxes: readonly ({ readonly width: number } | undefined)[]): number {
  const widest = Math.max(1, ...boxes.map((box) => box?.width ?? 0));
  const fits = (width - 64) / widest;
  return Math.min(fits, Math.max(LEAST_SCALE, Math.min(USUAL_SCALE, (0.42 * width) / widest)));
}
