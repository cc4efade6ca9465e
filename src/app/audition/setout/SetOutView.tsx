// Setting out, in place of the table: what is asked on a slip at the left, the ways it can come out at the right, best first.

import { Button } from 'react-aria-components/Button';
import type { Asked, SettingOut } from '../../../session/setout/asked.ts';
import { leaveSettingOut, takeOffer } from '../../../session/setout/setting-out.ts';
import { Slip } from '../../slip/Slip.tsx';
import { useTheSession } from '../../use-session.ts';
import { Said } from '../../words/Said.tsx';
import { BorderWords } from './BorderWords.tsx';
import { EchoWords } from './EchoWords.tsx';
import { MatchWords } from './MatchWords.tsx';
import { OfferCard } from './OfferCard.tsx';
import { type Found, useOffers } from './use-offers.ts';
import './setout.css';

export function SetOutView({ settingOut }: { readonly settingOut: SettingOut }) {
  const session = useTheSession();
  const { asked, taken } = settingOut;
  const found = useOffers(asked);
  const { title, about } = TITLES[asked.kind];
  return (
    <>
      <Slip title={title} about={about} foot={<Button className="button main" onPress={() => leaveSettingOut(session)}>{taken ? 'Back to the table' : 'Leave it as it was'}</Button>}>
        <AskedWords asked={asked} />
      </Slip>
      <section className="offers" aria-label="Ways it can come out" aria-busy={found.isLooking}>
        <p className="offers-head" role="status"><b>{headOf(found)}</b>{found.offers.kind === 'offers' && <span> best first, true pictures of the top</span>}</p>
        {found.offers.kind === 'none' && <div className="offer no-offer">{found.offers.why.map((sentence) => <p key={sentence} className="sentence"><Said>{sentence}</Said></p>)}</div>}
        {found.offers.kind === 'offers' && (
          <ol className="offer-list">
            {found.offers.offers.map((offer, i) => (
              <li key={offer.id}><OfferCard asked={asked} offer={offer} isBest={i === 0} isTaken={taken?.offer === offer.id} onTake={() => takeOffer(session, offer)} /></li>
            ))}
          </ol>
        )}
      </section>
    </>
  );
}

function AskedWords({ asked }: { readonly asked: Asked }) {
  switch (asked.kind) {
    case 'border': return <BorderWords asked={asked} />;
    case 'echo': return <EchoWords asked={asked} />;
    case 'match': return <MatchWords asked={asked} />;
  }
}

const NUMBERS = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine', 'Ten', 'Eleven', 'Twelve'];

function headOf({ offers, isLooking }: Found): string {
  if (isLooking) return 'Looking through your kit…';
  if (offers.kind === 'none') return 'It does not come out';
  const { length } = offers.offers;
  return `${NUMBERS[length] ?? length} ${length === 1 ? 'way' : 'ways'} it can come out`;
}

const TITLES: { readonly [kind in Asked['kind']]: { readonly title: string; readonly about: string } } = {
  border: { title: 'Set out the border', about: 'Counts and lies of your own templates with which every side comes out even.' },
  echo: { title: 'Echo this line', about: 'Lies of your own templates that keep at a distance from it.' },
  match: { title: 'Sew this line', about: 'Your own templates, laid so that they sew the line you drew.' },
};
