/** Bag and label: a donor is taken apart, one part after another, each kept in one go. */

import { useCallback, useMemo, useState } from 'preact/hooks';
import { value } from '../../log/workshop.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { Count } from '../forms_fields.js';
import {
  Act,
  codeGroups,
  Dock,
  html,
  Key,
  Page,
  say,
  Top,
  useSlice,
  Wait,
} from '../frame/index.js';
import { freshId } from '../fresh_id.js';
import { TakePhoto } from '../inspect/take_photo.js';
import { readyNames } from '../kinds/ready.js';
import { Choice } from '../new_thing/choice.js';
import { named } from '../new_thing/named.js';
import { useKeep } from '../run/keeping.js';
import { Bagged, isOut } from '../strip/bagged.js';
import { bagged, EMPTY, latePhotos, NEXT } from '../strip/entries.js';
import { LabelScan, useBlank, useWedge } from '../strip/label.js';
import { offered, PlaceChips } from '../strip/place.js';
import { Which } from '../strip/which.js';
import '../texts/strip.js';
import { t } from '../texts/index.js';

/** An evening, in ms: what was bagged longer ago is found on the donor's page. */
const EVENING = 12 * 3600 * 1000;

/** @param {any} props */
export function screen({ params, store }) {
  const donors = useSlice(store, (s) => s.allOf('donor'), []).workshop;
  const kinds = useSlice(store, (s) => s.allOf('kind'), []).workshop;
  const holders = useSlice(store, (s) => s.allOf('holder'), []).workshop;
  const [draft, change] = useDraft(store, 'strip', EMPTY);
  const { keep, trouble } = useKeep(store);
  const [asked, setAsked] = useState(params.donor ?? '');
  if (!draft || !donors || !kinds || !holders)
    return html`<${Page} title=${t('strip.title')} back=${BACK} ready=${false} quiet><div class="left"><${Wait} /></div></${Page}>`;
  const begin = (/** @type {string} */ donor) => {
    setAsked('');
    change(donor === draft.donor ? {} : { ...EMPTY, donor, bagged: [] });
  };
  const lists = {
    donors: named(donors, 'donor'),
    kinds: named(kinds, 'kind'),
    holders: named(holders, 'holder'),
  };
  const now = asked || draft.donor;
  const donor = lists.donors.find((/** @type {any} */ one) => one.id === now);
  if (!donor)
    return html`<${Which} donors=${lists.donors} back=${BACK} ...${{ keep, begin, trouble }} />`;
  if (asked && asked !== draft.donor) begin(asked);
  return html`<${Strip} key=${donor.id} ...${{ store, donor, lists, draft, change, keep, trouble }} />`;
}

const BACK = { to: '/more', says: t('form.back') };

/** @param {any} props */
function Strip(props) {
  const { store, donor, draft, change } = props;
  const { workshop } = useSlice(store, (s) => s.donorSlice(donor.id), [donor.id]);
  const [scanning, setScanning] = useState(false);
  const take = useCallback((/** @type {any} */ label) => {
    // Who scans one label scans the next: the camera opens by itself after each part.
    change(label);
    setScanning(false);
  }, []);
  const { wrong, hear } = useBlank(store, take);
  useWedge(hear);
  if (!workshop)
    return html`<${Page} title=${t('strip.title')} back=${BACK} ready=${false} quiet><div class="left"><${Wait} /></div></${Page}>`;
  if (scanning) {
    const without = () => {
      change({ code: '', after: [], scan: false });
      setScanning(false);
    };
    return html`<${LabelScan} ...${{ hear, wrong, without }} top=${html`<${Top} back=${{ to: '/more', says: t('strip.leave') }} />`} />`;
  }
  return html`<${Form} ...${props} ...${{ workshop, wrong, draft }} scan=${() => setScanning(true)} />`;
}

/** @param {any} props */
function Form(props) {
  const { donor, lists, draft, change, keep, trouble, workshop, wrong, scan } = props;
  const lines = draft.bagged.filter((/** @type {any} */ one) => one.at > Date.now() - EVENING);
  const places = useMemo(
    () => offered(workshop, lines, draft.kind),
    [workshop, draft.kind, lines.length],
  );
  const kinds = recent(lists.kinds, workshop, lines);
  const standing = lines.filter((/** @type {any} */ one) => !isOut(workshop, one)).length;
  const kind = (/** @type {string} */ id, /** @type {string} */ fresh) =>
    change({ kind: id, newKind: fresh ?? '', place: '' });
  const struck = (/** @type {string} */ id) =>
    change((/** @type {any} */ was) => ({
      bagged: was.bagged.map((/** @type {any} */ one) =>
        one.id === id ? { ...one, out: true } : one,
      ),
    }));
  const act = async () => {
    const made = bagged(draft, freshId(), lists.kinds);
    if (!(await keep(made.entries))) return false;
    const all = [{ ...made.line, at: Date.now() }, ...lines];
    change((/** @type {any} */ was) => {
      // Or it is ready while the part is being written.
      const shas = was.photos.filter((/** @type {string} */ one) => !draft.photos.includes(one));
      const late = shas.length > 0 ? latePhotos(all, lines, shas) : null;
      if (late) keep(late.entries);
      return { ...NEXT, kind: made.kind, newKind: '', bagged: late?.bagged ?? all };
    });
    feedback('kept');
    say(t('strip.kept', { name: made.line.name }));
    if (draft.scan) scan();
    return true;
  };
  return html`<${Page} title=${t('strip.title')} back=${{ to: '/more', says: t('strip.leave') }} quiet className="strip"><div class="left form">
    <h1 tabindex="-1" class="heads">${donor.name} <span class="soft">${t('strip.bagged.count', { n: standing })}</span></h1>
    <${Seen} ...${props} />
    ${wrong && html`<p class="tell" role="status">${wrong}</p>`}
    <${Choice} id="kind" label=${t('strip.kind')} none=${t('new.kind.none')} more=${t('new.kind.more')} list=${kinds} ready=${readyNames(lists.kinds)} heading="kind"
      value=${draft.kind} fresh=${draft.newKind} most=${3} onChange=${kind} mayAdd />
    <${PlaceChips} key=${`${draft.kind} ${lines.length}`} label=${t('strip.place')} places=${places} place=${draft.place} onChange=${(/** @type {string} */ place) => change({ place })} />
    <${Count} label=${t('new.quantity')} value=${draft.quantity} most=${9999} onChange=${(/** @type {number} */ quantity) => change({ quantity })} />
    <${Dock}><${Act} confirm disabled=${!draft.kind && !draft.newKind} onPress=${act} label=${t('strip.keep')} second=${secondOf(draft, lists.kinds)} /></${Dock}>
  </div><div class="right form"><${Bagged} lines=${lines} workshop=${workshop} keep=${keep} struck=${struck} />
    <${Choice} id="holder" label=${t('strip.holder')} none=${t('new.place.none')} more=${t('new.place.more')} list=${lists.holders} heading="holder"
      value=${draft.holder} onChange=${(/** @type {string} */ holder) => change({ holder })} />
    <${Key} icon="i-move" label=${t('strip.other')} onPress=${() => change({ ...EMPTY })} /></div>${trouble}</${Page}>`;
}

/** Photo and label side by side. @param {any} props */
function Seen({ store, draft, change, keep, scan }) {
  const { code, photos } = draft;
  const says = code ? t('strip.label.is', { code: codeGroups(code) }) : undefined;
  const taken = (/** @type {string} */ sha) =>
    change((/** @type {any} */ was) => {
      // A thumb may keep the part while its photo is still being made smaller.
      const late = latePhotos(was.bagged, draft.bagged, [sha]);
      if (!late) return { photos: [...was.photos, sha] };
      keep(late.entries);
      return { bagged: late.bagged };
    });
  return html`<div class="seen"><div class="pair"><${TakePhoto} store=${store} name=${t('strip.title')} taken=${taken} />
    <${Key} icon=${code ? 'i-label' : 'i-scan'} label=${code ? html`<span class="fig">${codeGroups(code)}</span>` : t('strip.label.scan')} spoken=${says} onPress=${scan} /></div>
    ${photos.length > 0 && html`<p class="soft" role="status">${t('strip.photos', { n: photos.length })}</p>`}</div>`;
}

/** What will be kept, in one line. @param {any} draft @param {any[]} kinds */
function secondOf(draft, kinds) {
  const what = draft.newKind || kinds.find((one) => one.id === draft.kind)?.name;
  if (!what) return t('strip.keep.kind');
  return draft.place ? t('strip.keep.place', { what, place: draft.place }) : what;
}

/** Kinds as they were bagged last, then those this donor gave, then the rest. @param {any[]} kinds @param {any} workshop @param {any[]} lines */
function recent(kinds, workshop, lines) {
  const ids = [
    ...lines.map(({ id }) => value(workshop.subject(id), 'kind')),
    ...workshop.all('part').map((/** @type {any} */ part) => value(part, 'kind')),
  ];
  const order = [...new Set(ids)];
  const rank = (/** @type {any} */ one) =>
    order.includes(one.id) ? order.indexOf(one.id) : order.length;
  return [...kinds].sort((one, other) => rank(one) - rank(other));
}
