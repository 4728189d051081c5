/** A photo as large as the glass: closer, pointed at with an arrow, beside a second one. */

import '../texts/photo.js';
import { useEffect, useState } from 'preact/hooks';
import { pictures, pointed } from '../../views/pictures.js';
import { feedback } from '../feedback.js';
import { Act, Dock, html, Key, Page, say, useSlice, Wait } from '../frame/index.js';
import { photoPath } from '../frame/photo.js';
import { Choose } from '../photo/choose.js';
import { Marking, Marks } from '../photo/marks.js';
import { Pane } from '../photo/pane.js';
import { altOf, captionOf } from '../photo/says.js';
import { useMark } from '../photo/use_mark.js';
import { useViews } from '../photo/use_views.js';
import { Zoom } from '../photo/zoom.js';
import { useKeep } from '../run/keeping.js';
import { t } from '../texts/index.js';

const HOMES = ['part', 'holder', 'joint', 'donor', 'kind'];

/** @param {{heading: string | null, id: string}} of */
const homeOf = ({ heading, id }) => (HOMES.includes(heading ?? '') ? `/${heading}/${id}` : '/find');

/** @param {any} props */
export function screen({ params, store, go, back }) {
  const { sha, with: other, about = '' } = params;
  const { workshop } = useSlice(store, (s) => s.partSlice(about), [about]);
  const mark = useMark(store, sha);
  const of = workshop ? pictures(workshop, about) : { id: about, heading: null };
  const way = { to: homeOf(of), says: t('form.back') };
  if (!workshop || !mark.ready)
    return html`<${Page} title="" back=${way} ready=${false} quiet><div class="left"><${Wait} /></div></${Page}>`;
  const { lines, shown } = shownOf(workshop, of, [sha, other].filter(Boolean));
  const rest = lines.filter((one) => one.photo !== sha && one.photo !== other);
  const props = { of, way, shown, rest, store, go, back };
  return other ? html`<${Two} ...${props} />` : html`<${One} ...${props} mark=${mark} />`;
}

/** @param {any} workshop @param {any} of @param {string[]} shas */
function shownOf(workshop, of, shas) {
  /** @type {any[]} */
  const lines = [...of.photos, ...of.examples];
  const shown = shas.map((photo) => {
    const line = lines.find((one) => one.photo === photo) ?? null;
    const about = line?.about ?? of.id;
    const marks = pointed(workshop, about, photo);
    return { sha: photo, line, about, marks, says: altOf(of.name ?? '', marks) };
  });
  return { lines, shown };
}

/** @param {any} props */
function Frame({ of, way, says, trouble, className, children }) {
  const name = of.name || t('photo');
  const title = of.name ? t('photo.title', of) : name;
  return html`<${Page} title=${title} back=${way} quiet className="photo"><div class=${`left ${className}`}>
    <div class="id"><h1 tabindex="-1">${name}</h1><p class="where">${says}</p></div>${children}</div>${trouble}</${Page}>`;
}

/** The photo to compare with, chosen in a sheet. @param {any} props */
function CompareKey({ label, of, shown, rest, go, replace }) {
  const [open, setOpen] = useState(false);
  const choose = (/** @type {string} */ photo) => {
    setOpen(false);
    go(`/photo/${shown[0].sha}?${new URLSearchParams({ about: of.id, with: photo })}`, { replace });
  };
  return html`<${Key} icon=${replace ? undefined : 'i-photo'} label=${label} onPress=${() => setOpen(true)} />
    ${open && html`<${Choose} lines=${rest} onChoose=${choose} onClose=${() => setOpen(false)} />`}`;
}

/** @param {any} props */
function One(props) {
  const { of, shown, store, mark } = props;
  const [{ sha, line, about, marks, says }] = shown;
  const views = useViews(mark.on ? mark : null);
  const { keep, trouble } = useKeep(store);
  const act = async () => {
    if (!(await keep([mark.entry(about)]))) return false;
    await mark.leave();
    feedback('kept');
    say(t('photo.mark.kept'));
    return true;
  };
  const told = mark.on ? t(mark.half ? 'photo.mark.head' : 'photo.mark.how') : captionOf(line);
  return html`<${Frame} ...${props} says=${told} trouble=${trouble} className=${mark.on ? 'marking' : ''}>
    <${Pane} sha=${sha} says=${says} marks=${marks} view=${views.of(0)} onView=${views.set(0)} arrow=${mark.arrow} onDraw=${mark.on ? mark.draw : null} />
    <${Zoom} views=${views} />${mark.on && html`<${Marking} mark=${mark} />`}<${Marks} marks=${marks} about=${about} />
    ${mark.on && html`<${Dock}><${Act} confirm disabled=${!mark.whole} onPress=${act} label=${t('photo.mark.keep')} second=${mark.whole ? mark.note : t('photo.mark.draw')} /></${Dock}>`}
    ${
      !mark.on &&
      of.id &&
      html`<${Dock}><div class="pair"><${Key} icon="i-point" label=${t('photo.mark')} spoken=${t('photo.mark.spoken')} onPress=${mark.begin} />
      <${CompareKey} ...${props} label=${t('photo.compare')} /></div></${Dock}>`
    }</${Frame}>`;
}

/** @param {any} props */
function Two(props) {
  const { of, shown, back } = props;
  const views = useViews(null);
  const [first, second] = shown;
  useEffect(views.whole, [second.sha]);
  return html`<${Frame} ...${props} says=${t('photo.compare')} className="">
    <div class="two">${shown.map(
      (
        /** @type {any} */ one,
        /** @type {number} */ at,
      ) => html`<${Pane} key=${one.sha} sha=${one.sha} says=${one.says} marks=${one.marks}
      view=${views.of(at)} onView=${views.set(at)} caption=${captionOf(one.line)} chosen=${!views.together && views.at === at} onChoose=${() => views.choose(at)} />`,
    )}</div><${Zoom} views=${views} />
    <${Dock}><div class="pair"><${Key} label=${t('photo.both')} pressed=${views.together} onPress=${views.join} />
      <${CompareKey} ...${props} label=${t('photo.another')} replace />
      <${Key} label=${t('photo.only')} onPress=${() => back(photoPath(first.sha, of.id))} /></div></${Dock}></${Frame}>`;
}
