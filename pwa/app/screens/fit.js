/** Fit a part: on which build, at which place; elsewhere than its own place only with a reason. */

import { value } from '../../log/workshop.js';
import { part as partView } from '../../views/part.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { entriesOf, meant, OFF } from '../fit/entries.js';
import { Chips, TextField } from '../forms_fields.js';
import {
  Act,
  Caution,
  Dock,
  html,
  Key,
  Missing,
  Page,
  say,
  useSlice,
  Wait,
} from '../frame/index.js';
import { useKeep } from '../run/keeping.js';
import { PlaceChips } from '../strip/place.js';
import '../texts/strip.js';
import { t } from '../texts/index.js';
import { capital } from '../words.js';

/** @type {{build: string, name: string, place: string, reason: string}} */
const NOTHING = { build: '', name: '', place: '', reason: '' };

/** @param {any} props */
export function screen({ params, store, back }) {
  const { workshop } = useSlice(store, (s) => s.partSlice(params.id), [params.id]);
  const { workshop: builds } = useSlice(store, (s) => s.allOf('build'), []);
  const [draft, change, forget] = useDraft(store, `fit:${params.id}`, NOTHING);
  const home = { to: `/part/${params.id}`, says: t('form.back') };
  if (!workshop || !builds || !draft)
    return html`<${Page} title=${t('way.fit')} back=${home} ready=${false} quiet><div class="left"><${Wait} /></div></${Page}>`;
  const part = partView(workshop, params.id);
  if (part.heading !== 'part' || part.hidden)
    return html`<${Page} title=${t('fit.not-here')} back=${home}><div class="left"><h1 tabindex="-1" class="gone">${t('fit.not-here')}</h1><${Missing} says=${t('fit.not-here')} then=${t('run.not-here.then')} /></div></${Page}>`;
  return html`<${Form} ...${{ store, back, home, workshop, part, draft, change, forget }} builds=${choices(builds, part)} />`;
}

/** Builds to choose from; a part that is fitted may be taken off. @param {any} workshop @param {any} part */
function choices(workshop, part) {
  const all = workshop.all('build').map((/** @type {any} */ one) => ({
    value: one.id,
    says: value(one, 'name') ?? t('fact.build'),
  }));
  const on = part.fitted.some((/** @type {any} */ one) => one.build);
  return on ? [...all, { value: OFF, says: t('fit.off') }] : all;
}

/** @param {any} props */
function Form({ store, back, home, workshop, part, builds, draft, change, forget }) {
  const { keep, trouble } = useKeep(store);
  const name = part.name ?? '';
  const said = meant(workshop, part, builds, draft);
  const { build, off, held, reason, place } = said;
  const act = async () => {
    if (!(await keep(entriesOf(part, said)))) return false;
    await forget();
    feedback('kept');
    say(t(off ? 'fit.kept.off' : 'fit.kept', { name }));
    back(home.to);
    return true;
  };
  return html`<${Page} title=${t('fit.title', { name })} back=${home} demo=${part.invented} quiet><div class="left form">
    <div class="id"><h1 tabindex="-1">${t('fit.title', { name })}</h1></div>
    ${builds.length > 0 ? html`<${Chips} label=${t('fit.build')} value=${build} words=${builds} onChange=${(/** @type {string} */ one) => change({ build: one })} />` : html`<${TextField} id="fit-build" label=${t('fit.build.first')} value=${draft.name} onChange=${(/** @type {string} */ one) => change({ name: one })} />`}
    ${!off && html`<${PlaceChips} label=${t('fit.place')} places=${placesOf(part)} place=${draft.place} onChange=${(/** @type {string} */ one) => change({ place: one })} />`}
    ${held.length > 0 && build && html`<${Held} ...${{ held, part, place, draft, change }} />`}
    <${Dock}><${Act} confirm disabled=${!build} onPress=${held.length && !reason ? showWhy : act} ...${words({ build, off, held, reason, place, first: builds.length === 0 })} /></${Dock}>
  </div>${trouble}</${Page}>`;
}

/** Brings what holds it back into view, with the field for the reason. */
function showWhy() {
  const why = document.getElementById('fit-why');
  why?.scrollIntoView({ block: 'center' });
  why?.focus({ preventScroll: true });
  return false;
}

/** Its own place, and the one it is meant for. @param {any} part @returns {string[]} */
const placesOf = (part) =>
  [...new Set([part.own_place, part.for.place, part.from.text])].filter(Boolean);

/** @param {any} props */
function Held({ held, part, place, draft, change }) {
  const facts = { name: capital(part.name ?? ''), own: part.own_place, place };
  return html`<section class="stack">${held.map((/** @type {string} */ why) => html`<${Caution} key=${why} word="danger" says=${t(`fit.held.${why}`, facts)} />`)}
    ${held.includes('not-inspected') && html`<${Key} href=${`/inspect/${part.id}`} icon="i-find" label=${t('fit.inspect')} />`}
    <label class="field"><span>${t('fit.why')}</span><textarea id="fit-why" value=${draft.reason}
      onInput=${(/** @type {any} */ event) => change({ reason: event.target.value })}></textarea></label></section>`;
}

/** @param {{build: string, off: boolean, held: string[], reason: string, place: string, first: boolean}} facts */
function words({ build, off, held, reason, place, first }) {
  if (off) return { label: t('fit.act.off') };
  if (!build) return { label: t('fit.act'), second: t(first ? 'fit.act.name' : 'fit.act.build') };
  if (held.length && !reason) return { label: t('fit.act.held'), second: t('fit.act.held.then') };
  return { label: t('fit.act'), second: place ? t('fit.act.at', { place }) : undefined };
}
