/** The builds of the workshop, and a new one: its name and its engine, kept at once. */
import { value } from '../../log/workshop.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { TextField } from '../forms_fields.js';
import { Act, Dock, html, Missing, Page, say, useSlice, Wait } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { freshId } from '../fresh_id.js';
import { useKeep } from '../run/keeping.js';
import { t } from '../texts/index.js';
import { byName } from '../words.js';
import '../texts/builds.js';

const BACK = { to: '/more', says: t('form.back') };

/** @param {{store: any}} props */
export function screen({ store }) {
  const { workshop } = useSlice(store, (one) => one.allOf('build'), []);
  const [draft, change, forget] = useDraft(store, 'build', { name: '', engine: '' });
  const { keep, trouble } = useKeep(store);
  const title = t('builds.title');
  if (!workshop || !draft)
    return html`<${Page} title=${title} back=${BACK} now="more" ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const builds = workshop
    .all('build')
    .map((/** @type {any} */ one) => ({
      id: one.id,
      name: value(one, 'name') ?? '',
      engine: value(one, 'engine') ?? '',
    }))
    .sort(byName);
  const name = draft.name.trim();
  const act = async () => {
    const engine = draft.engine.trim();
    const fields = { name, ...(engine ? { engine } : {}) };
    if (!(await keep([{ heading: 'build', about: freshId(), body: { fields } }]))) return false;
    await forget();
    feedback('kept');
    say(t('form.kept', { name }));
    return true;
  };
  return html`<${Page} title=${title} back=${BACK} now="more" className="list"><div class="left form"><div class="id"><h1 tabindex="-1">${title}</h1></div>
    ${builds.length ? html`<ul class="sheet">${builds.map((/** @type {any} */ one) => html`<li key=${one.id}><${Row} href=${`/edit/${one.id}`} icon="i-home" name=${one.name} says=${one.engine} /></li>`)}</ul>` : html`<${Missing} says=${t('builds.none')} />`}
    <section class="stack"><h2>${t('builds.new')}</h2>
    <${TextField} id="build-name" label=${t('form.name')} value=${draft.name} onChange=${(/** @type {string} */ typed) => change({ name: typed })} />
    <${TextField} id="build-engine" label=${t('builds.engine')} hint=${t('form.optional')} value=${draft.engine} onChange=${(/** @type {string} */ typed) => change({ engine: typed })} /></section>
    <${Dock}><${Act} confirm disabled=${!name} onPress=${act} label=${t('builds.begin')} second=${name || t('form.wants-name')} /></${Dock}></div>${trouble}</${Page}>`;
}
