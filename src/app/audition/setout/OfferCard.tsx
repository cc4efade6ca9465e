// One way it can come out: its true picture, its sentence, and the one press that takes it.

import { Button } from 'react-aria-components/Button';
import type { Asked } from '../../../session/setout/asked.ts';
import type { Offer } from '../../../session/setout/offer.ts';
import { Said } from '../../words/Said.tsx';
import { OfferPicture } from './OfferPicture.tsx';

export interface OfferCardProps {
  readonly asked: Asked;
  readonly offer: Offer;
  readonly isBest: boolean;
  readonly isTaken: boolean;
  readonly onTake: () => void;
}

export function OfferCard({ asked, offer, isBest, isTaken, onTake }: OfferCardProps) {
  return (
    <article className={`offer${isBest ? ' best' : ''}${isTaken ? ' taken' : ''}`} aria-label={offer.title}>
      <OfferPicture asked={asked} offer={offer} />
      <div className="offer-words">
        <h2><Said>{offer.title}</Said></h2>
        {offer.about.map((sentence) => <p key={sentence} className="aside"><Said>{sentence}</Said></p>)}
        {isTaken ? <p className="is-chosen">Chosen</p> : <Button className={isBest ? 'button main' : 'button'} aria-label={`Choose this: ${offer.title}`} onPress={onTake}>Choose this</Button>}
      </div>
    </article>
  );
}
