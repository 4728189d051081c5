/** Reasons: strike out, accept, next pass though not whole, loosen. Both lines stay readable. */

import { feedback } from '../feedback.js';
import { pathOf } from '../frame/code_found.js';
import { html, Missing, Page, say, useSlice, Wait } from '../frame/index.js';
import * as drafts from '../run/drafts.js';
import { capital, listed, named, passSays, written } from '../run/figures.js';
import { useKeep } from '../run/keeping.js';
import { ReasonScreen } from '../run/reason.js';
import { useRun } from '../run/use_run.js';
import { t } from '../texts/index.js';

/** @param {any} props */
export function screen(props) {
  return props.params.pull ? html`<${OfJoint} ...${props} />` : html`<${OfFact} ...${props} />`;
}

/** @param {string[]} keys @param {Record<string, any>} [facts] */
const words = (keys, facts) => keys.map((key) => t(`reason.${key}`, facts));

/** A fact that is no pull: an inspection, a place, a note. @param {any} props */
function OfFact({ params, store, back }) {
  const { keep, trouble } = useKeep(store);
  const home = params.about ? pathOf({ heading: params.of ?? 'part', id: params.about }) : '/';
  const { workshop } = useSlice(store, (s) => s.partSlice(params.about ?? ''), [params.about]);
  if (!workshop) return html`<main class="run narrow"><${Wait} /></main>`;
  const given = verdictsOf(workshop.subject(params.about ?? ''), params.entry);
  const strike = async (/** @type {string} */ reason) => {
    const entries = [params.entry, ...given.map(({ id }) => id)];
    if (!(await keep(entries.map((id) => drafts.strikeOut(id, reason))))) return false;
    feedback('kept');
    say(t('strike.kept'));
    back(home);
    return true;
  };
  return html`<${ReasonScreen} store=${store} name=${params.entry} title=${t('strike.title.fact')} says=${t('strike.says')} lines=${given.map(({ id, body }) => html`<p key=${id}>${t('strike.verdict', { verdict: t(`verdict.${body.verdict}`) })}</p>`)}
    chips=${words(['mistake', 'wrong-thing', 'typed-wrong', 'twice', 'looked-again', 'not-so'])} label=${t('strike.act.plain')}
    leave=${() => back(home)} keep=${strike} trouble=${trouble} />`;
}

/** The verdicts that an inspection gave: without it they have nothing to stand on. @param {any} part @param {string} entry @returns {any[]} */
const verdictsOf = (part, entry) =>
  (part?.facts ?? []).filter(
    (/** @type {any} */ { heading, struck, body }) =>
      heading === 'verdict' && !struck && body.inspection === entry,
  );

/** @param {any} props */
function OfJoint({ params, store, go, back }) {
  const run = useRun(store, params.id, { go, back });
  const home = `/joint/${params.id}`;
  if (run.missing)
    return html`<${Page} title=${t('run.not-here')}><div class="left"><${Missing} says=${t('run.not-here')} /></div></${Page}>`;
  if (!run.known || !run.bench) return html`<main class="run narrow"><${Wait} /></main>`;
  const { view } = run.known;
  const what = (WHAT[params.how] ?? strike)(view, params.pull);
  if (!what) {
    return html`<${Page} title=${t('strike.gone')} back=${{ to: home, says: t('reading.back') }} quiet>
      <div class="left"><h1 tabindex="-1" class="gone">${t('strike.gone')}</h1><${Missing} says=${t('strike.gone')} /></div></${Page}>`;
  }
  const keep = async (/** @type {string} */ reason) => {
    if (!(await run.keep(what.entries(reason)))) return false;
    feedback('kept');
    say(what.kept);
    await run.refresh();
    back(home);
    return true;
  };
  return html`<${ReasonScreen} store=${store} name=${`${params.id}:${params.pull}:${params.how ?? ''}`} ...${what} demo=${view.invented}
    leave=${() => back(home)} keep=${keep} trouble=${run.trouble} />`;
}

/**
 * @typedef {{title: string, says: string, chips: string[], label: string, kept: string, lines?: any,
 *   entries: (reason: string) => any[]} | null} What
 */

/** @type {Record<string, (view: any, id: string) => What>} */
const WHAT = { accept: acceptance, onward, loosen };

/** @param {any} view @param {string} id */
function pullOf(view, id) {
  return (
    view.recent.find((/** @type {any} */ pull) => pull.id === id) ??
    (view.last?.id === id ? view.last : null)
  );
}

/** @param {any} view @param {string} id @returns {What} */
function strike(view, id) {
  const pull = pullOf(view, id);
  if (!pull || pull.struck) return null;
  const name = named(view, pull.number);
  const noun = view.noun ?? t('noun.one');
  const value = pull.reading ?? pull.target;
  return {
    title: t('strike.title', { name }),
    says: t('strike.says'),
    lines: value && html`<p>${written(value)}</p>`,
    chips: words(['wrong-one', 'slipped', 'mistake', 'misread', 'no-click', 'wrench'], { noun }),
    label: t('strike.act', { number: pull.number }),
    kept: t('strike.kept'),
    entries: (reason) => [drafts.strikeOut(id, reason)],
  };
}

/** @param {any} view @param {string} id @returns {What} */
function acceptance(view, id) {
  const pull = pullOf(view, id);
  if (!pull || pull.struck) return null;
  const name = named(view, pull.number);
  return {
    title: t('accept.title', { name }),
    says: t('accept.says', { name: capital(name) }),
    chips: words(['checked', 'manual', 'misread']),
    label: t('accept.act', { number: pull.number }),
    kept: t('accept.act', { number: pull.number }),
    entries: (reason) => [drafts.accept(view, id, reason)],
  };
}

/** @param {any} view @param {string} pass @returns {What} */
function onward(view, pass) {
  return {
    title: t('onward.title'),
    says: t('onward.says', { numbers: listed(view.open), pass: passSays(view, pass) }),
    chips: words(['later', 'no-reach', 'manual']),
    label: t('onward.act'),
    kept: t('onward.act'),
    entries: (reason) => [drafts.runFact(view, 'onward', { pass, reason })],
  };
}

/** @param {any} view @param {string} id a fastener, or all @returns {What} */
function loosen(view, id) {
  if (!view.run) return null;
  const one = view.fasteners.find((/** @type {any} */ f) => f.id === id);
  const all = !one;
  const number = one?.number ?? 0;
  return {
    title: all
      ? t('loosen.title.all', { n: view.count })
      : t('loosen.title', { name: named(view, number) }),
    says: t('loosen.says'),
    chips: words(['gasket', 'order', 'value', 'part', 'mistake']),
    label: all ? t('loosen.act.all') : t('loosen.act', { number }),
    kept: all ? t('loosen.act.all') : t('loosen.act', { number }),
    entries: (reason) => [drafts.loosening(view, all ? null : [id], reason)],
  };
}
