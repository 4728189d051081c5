/** Tonight: what can I do with what is here? */
import { useState } from 'preact/hooks';
import { value } from '../../log/workshop.js';
import { tonight as tonightView } from '../../views/tonight.js';
import { day, today } from '../dates.js';
import { Act, Dock, Empty, html, Icon, Page, Source, Wait } from '../frame/index.js';
import { Torques } from '../frame/joint_card.js';
import { Row } from '../frame/row.js';
import { useSlice } from '../frame/store.js';
import { t } from '../texts/index.js';
import { capital, inSentence, listed } from '../words.js';

/** @param {any} joint */
const stopped = (joint) =>
  t(joint.pass_number ? 'tonight.stopped' : 'tonight.stopped.hand', {
    day: day(joint.last),
    pass: joint.pass_number,
  });

/** @param {any} joint */
const nextWords = (joint) =>
  joint.next === null
    ? ''
    : t('tonight.next', { noun: joint.noun ?? t('card.noun'), number: joint.next });

/** The joint to go on with, open as a card. @param {{joint: any, going: boolean}} props */
function First({ joint, going }) {
  const name = inSentence(joint.name);
  const says = going
    ? [stopped(joint), nextWords(joint)].filter(Boolean).join(', ')
    : t('card.size', { count: joint.count, size: joint.thread ?? '' });
  return html`<article class="sheet step"><header><h2>${t(going ? 'tonight.finish' : 'tonight.begin', { name })}</h2></header><p class="soft">${says}</p>
    <ul class="fetch"><li><${Icon} name="i-wrench" /><span><b>${t('tonight.figures')}</b><${Torques} joint=${joint} /></span><span></span></li>
    <li><${Icon} name="i-drop" /><span><b>${t('tonight.lubricant')}</b>${joint.lubricant ?? t('tonight.lubricant.none')}</span><span></span></li></ul><${Source} text=${joint.source} /></article>`;
}

/** @param {{title: string, children?: any}} props */
const Part = ({ title, children }) =>
  html`<div class="sect"><h2>${title}</h2></div><ul class="sheet">${children}</ul>`;

/** @param {any[]} joints @param {(joint: any) => string} says */
const jointRows = (joints, says) =>
  joints.map(
    (joint) =>
      html`<li key=${joint.id}><${Row} href=${`/joint/${joint.id}`} icon="i-star" name=${joint.name} says=${says(joint)} /></li>`,
  );

/** @param {any} look */
const lookPath = (look) =>
  look.holder
    ? `/inspect/${look.holder}${look.kind ? `?kind=${look.kind}` : ''}`
    : `/inspect/${look.part}`;

/** What holds a joint back: a sentence for each reason, with the parts it is said of. @param {any} joint */
function heldWords({ held }) {
  const reasons = [...new Set(held.map((/** @type {any} */ part) => part.why))];
  const sentences = reasons.map((why) => {
    const names = held.filter((/** @type {any} */ part) => part.why === why).map(nameOf);
    return capital(t(`held.${why}`, { n: names.length, parts: listed(names).join(', ') }));
  });
  return sentences.join(' ');
}

/** @param {any} part */
const nameOf = (part) => inSentence(part.name ?? t('record.nameless'));

/** A row for each kind of part: all of them in one holder open together. @param {any[]} look */
function kindsOf(look) {
  const kinds = new Map();
  for (const one of look) {
    const key = one.kind ?? one.part;
    kinds.set(key, [...(kinds.get(key) ?? []), one]);
  }
  return [...kinds.values()];
}

/** @param {{group: any[]}} props */
function Look({ group }) {
  const [open, setOpen] = useState(false);
  const [one] = group;
  const row = (/** @type {any} */ each, /** @type {string} */ name) =>
    html`<${Row} href=${lookPath(each)} icon="i-find" name=${name} says=${t('tonight.left', { n: each.left })} />`;
  const left = group.reduce((sum, each) => sum + each.left, 0);
  const name = (left > 1 ? one.plural : null) ?? one.kind_name ?? t('record.nameless');
  if (group.length === 1)
    return html`<li>${row(one, [name, one.name].filter(Boolean).join(', '))}</li>`;
  return html`<li><button type="button" class="row" aria-expanded=${String(open)} onClick=${() => setOpen(!open)}>
    <${Icon} name="i-find" /><span class="says"><b>${name}</b><span class="soft">${t('tonight.left.places', { left, n: group.length })}</span></span><span></span></button>
    ${open && html`<ul>${group.map((each) => html`<li key=${`${each.holder}${each.part}`}>${row(each, each.name ?? t('place.unknown'))}</li>`)}</ul>`}</li>`;
}

/** @param {{view: any}} props */
function Rest({ view }) {
  const [first, ...going] = view.go_on;
  const begin = first ? view.begin : view.begin.slice(1);
  return html`${view.late.length > 0 && html`<${Part} title=${t('tonight.late')}>${view.late.map((/** @type {any} */ one) => html`<li key=${one.id}><${Row} href=${`/back/${one.part}`} icon="v-machine" name=${one.name ?? t('record.nameless')} says=${t('tonight.late.says', { to: one.to, for: one.for || t('tonight.late.work'), n: one.days })} /></li>`)}</${Part}>`}
    ${going.length + begin.length > 0 && html`<${Part} title=${t('tonight.after')}>${jointRows(going, stopped)}${jointRows(begin, (joint) => t('card.size', { count: joint.count, size: joint.thread ?? '' }))}</${Part}>`}
    ${view.held.length > 0 && html`<${Part} title=${t('tonight.held')}>${jointRows(view.held, heldWords)}</${Part}>`}
    ${view.look.length > 0 && html`<${Part} title=${t('tonight.look')}>${kindsOf(view.look).map((group) => html`<${Look} key=${`${group[0].kind}${group[0].part}`} group=${group} />`)}</${Part}>`}
    ${view.put.length > 0 && html`<${Part} title=${t('tonight.put')}>${view.put.map((/** @type {any} */ one) => html`<li key=${one.id}><${Row} href=${`/move/${one.id}`} icon="i-move" name=${one.name} says=${t('place.unknown')} /></li>`)}</${Part}>`}
    ${view.no_value.length > 0 && html`<${Part} title=${t('tonight.no-value')}>${jointRows(view.no_value, () => t('tonight.no-value.says'))}</${Part}>`}`;
}

/** @param {any} view @returns {{label: string, second: string, href: string} | null} the first thing to do */
function firstAct(view) {
  const joint = view.go_on[0] ?? view.begin[0];
  if (joint)
    return {
      label: t(view.go_on[0] ? 'tonight.go-on' : 'tonight.start', { name: inSentence(joint.name) }),
      second: view.go_on[0]
        ? nextWords(joint)
        : t('card.size', { count: joint.count, size: joint.thread ?? '' }),
      href: `/joint/${joint.id}`,
    };
  const look = view.look[0];
  return look
    ? {
        label: t('tonight.inspect', { name: inSentence(look.kind_name ?? look.name) }),
        second: t('tonight.left', { n: look.left }),
        href: lookPath(look),
      }
    : null;
}

/** @param {any} view */
const isEmpty = (view) =>
  ['go_on', 'begin', 'look', 'put', 'no_value', 'held', 'late'].every(
    (name) => view[name].length === 0,
  );

/** Nothing to do: on the first day, or when everything is done. @param {{fresh: boolean}} props */
function Nothing({ fresh }) {
  const act = fresh
    ? html`<${Act} href="/labels" label=${t('labels')} second=${t('more.labels.says')} />`
    : html`<${Act} href="/scan" label=${t('doors.scan')} second=${t('scan.open.record')} />`;
  return html`<${Empty} icon=${fresh ? 'i-label' : 'i-home'} says=${t(fresh ? 'first-day' : 'tonight.empty')} then=${t(fresh ? 'first-day.then' : 'tonight.empty.then')} /><${Dock}>${act}</${Dock}>`;
}

/** How much there is of each sort. @param {any} view */
function canWords(view) {
  const counts = {
    go: view.go_on.length,
    begin: view.begin.length,
    look: kindsOf(view.look).length,
  };
  const words = Object.entries(counts).filter(([, n]) => n > 0);
  return words.map(([name, n]) => t(`tonight.can.${name}`, { n })).join(', ');
}

/** @param {{view: any, fresh: boolean}} props */
function Evening({ view, fresh }) {
  if (isEmpty(view)) return html`<div class="left"><${Title} /><${Nothing} fresh=${fresh} /></div>`;
  const joint = view.go_on[0] ?? view.begin[0];
  const act = firstAct(view);
  return html`<div class="left"><${Title} says=${canWords(view)} />
    ${joint && html`<${First} joint=${joint} going=${Boolean(view.go_on[0])} />`}
    ${act && html`<${Dock}><${Act} ...${act} /></${Dock}>`}</div>
    <div class="right"><${Rest} view=${view} /></div>`;
}

/** @param {{says?: string}} props */
const Title = ({ says }) =>
  html`<section class="hello"><h1 tabindex="-1">${t('tonight')}</h1>${says && html`<p class="soft">${says}</p>`}</section>`;

/** What there is to look at, with what several of its kind are called. @param {any} view @param {any} workshop */
const withPlurals = (view, workshop) => ({
  ...view,
  look: view.look.map((/** @type {any} */ one) => ({
    ...one,
    plural: value(workshop.subject(one.kind ?? ''), 'plural'),
  })),
});

/** @param {{store: any}} props */
export function screen({ store }) {
  const { state, workshop } = useSlice(store, (s) => s.tonightSlice(), []);
  const view = workshop && withPlurals(tonightView(workshop, today()), workshop);
  const invented = view?.go_on
    .concat(view.begin)
    .some((/** @type {any} */ joint) => joint.invented);
  return html`<${Page} title=${t('tonight')} now="tonight" demo=${invented} ready=${state === 'ready'}>
    ${view ? html`<${Evening} view=${view} fresh=${workshop.all('part').length === 0} />` : html`<div class="left"><${Title} /><${Wait} /></div>`}</${Page}>`;
}
