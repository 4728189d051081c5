/** Devices: who belongs to this workshop; a name, a code for a new one, taking one off. */
import { useState } from 'preact/hooks';
import { asked } from '../asking.js';
import { when } from '../dates.js';
import { takeNames } from '../device_names.js';
import { Act, Dock, Empty, html, Key, Page, Sheet, say, useAnswer, Wait } from '../frame/index.js';
import { Matrix } from '../frame/matrix.js';
import { t } from '../texts/index.js';
import { capital } from '../words.js';

/** What is known of a device in one line. @param {any} device */
function deviceWords(device) {
  if (device.own) return t('devices.computer');
  const mine = device.this ? t('devices.this') : '';
  const contact = device.last_contact
    ? t('devices.contact', { when: when(device.last_contact) })
    : t('devices.contact.never');
  const off = device.revoked ? t('devices.revoked', { when: when(device.revoked) }) : contact;
  const ranges = (device.holes ?? [])
    .map((/** @type {number[]} */ hole) => [...new Set(hole)].join('–'))
    .join(', ');
  return [mine, off, ranges && t('devices.holes', { ranges })].filter(Boolean).join(' ');
}

/** @param {{device: any, onRename: (device: any) => void, onRevoke: (device: any) => void}} props */
function Device({ device, onRename, onRevoke }) {
  const may = !device.revoked && !device.own;
  return html`<li><p><b>${capital(device.name)}.</b> <span class="soft">${deviceWords(device)}</span></p>${
    may &&
    html`<div class="pair">
    <${Key} label=${t('devices.rename')} spoken=${t('devices.rename.spoken', { name: device.name })} onPress=${() => onRename(device)} />
    <${Key} icon="i-apart" label=${t('devices.revoke')} spoken=${t('devices.revoke.spoken', { name: device.name })} onPress=${() => onRevoke(device)} /></div>`
  }</li>`;
}

/** @param {{code: any, onClose: () => void}} props */
const NewCode = ({
  code,
  onClose,
}) => html`<${Sheet} title=${t('devices.new')} onClose=${onClose}><p>${t('devices.code')}</p>
  ${code.qr && html`<div class="pair-qr"><${Matrix} rows=${code.qr} says=${t('devices.code.qr', { url: code.url })} /></div>`}
  <p class="pair-code">${code.code}</p><p class="soft">${code.url}</p><p class="soft">${t('devices.code.until', { when: when(code.expires) })}</p></${Sheet}>`;

/** @param {{device: any, onKeep: (name: string) => Promise<unknown>, onClose: () => void}} props */
function Rename({ device, onKeep, onClose }) {
  const [name, setName] = useState(device.name);
  return html`<${Sheet} title=${t('devices.rename')} onClose=${onClose}><div class="form"><label class="field"><span>${t('devices.name')}</span><input type="text" maxlength="60" value=${name} onInput=${(/** @type {any} */ event) => setName(event.target.value)} /></label>
    <${Act} label=${t('devices.keep')} disabled=${name.trim() === ''} onPress=${() => onKeep(name.trim())} /></div></${Sheet}>`;
}

/** @param {{device: any, onRevoke: () => Promise<unknown>, onClose: () => void}} props */
const Revoke = ({ device, onRevoke, onClose }) =>
  html`<${Sheet} title=${t('devices.revoke.title', { name: device.name })} onClose=${onClose}><div class="form"><p>${t('devices.revoke.says')}</p><${Act} label=${t('devices.revoke.act')} onPress=${onRevoke} /></div></${Sheet}>`;

/** @param {{devices: any[], store: any, onAgain: () => void}} props */
function List({ devices, store, onAgain }) {
  const [open, setOpen] = useState(
    /** @type {{what: string, device?: any, code?: any} | null} */ (null),
  );
  const close = () => setOpen(null);
  const change =
    (/** @type {string} */ method, /** @type {string} */ path) =>
    async (/** @type {any} */ body) => {
      await asked(store, method, path, body);
      close();
      onAgain();
    };
  const make = async () => {
    try {
      setOpen({ what: 'code', code: await asked(store, 'POST', '/pairing-codes') });
    } catch (error) {
      say(/** @type {any} */ (error).says ?? t('devices.offline'), true);
    }
  };
  const device = open?.device;
  return html`<ul class="sheet notes">${devices.map((one) => html`<${Device} key=${one.id} device=${one} onRename=${(/** @type {any} */ it) => setOpen({ what: 'name', device: it })} onRevoke=${(/** @type {any} */ it) => setOpen({ what: 'off', device: it })} />`)}</ul>
    <${Dock}><${Act} label=${t('devices.new')} second=${t('devices.new.second')} onPress=${make} /></${Dock}>
    ${open?.what === 'code' && html`<${NewCode} code=${open.code} onClose=${close} />`}
    ${open?.what === 'name' && html`<${Rename} device=${device} onClose=${close} onKeep=${(/** @type {string} */ name) => change('PATCH', `/devices/${device.id}`)({ name })} />`}
    ${open?.what === 'off' && html`<${Revoke} device=${device} onClose=${close} onRevoke=${() => change('POST', `/devices/${device.id}/revoke`)(undefined)} />`}`;
}

/** @param {{onAgain: () => void, error: any}} props */
const Offline = ({
  onAgain,
  error,
}) => html`<${Empty} icon="i-apart" says=${error?.says && error.code !== 'not-connected' ? error.says : t('devices.offline')} then=${error?.next ?? t('devices.offline.then')} />
  <${Dock}><${Act} label=${t('devices.again')} onPress=${onAgain} /></${Dock}>`;

/** The devices; their names are known to every screen from then on. @param {any} store */
async function listed(store) {
  const answer = await asked(store, 'GET', '/devices');
  await takeNames(store, answer.devices);
  return answer;
}

/** @param {{store: any}} props */
export function screen({ store }) {
  const [turn, setTurn] = useState(0);
  const { state, value, error } = useAnswer(
    () => listed(store).catch((fault) => ({ fault })),
    [turn],
  );
  const again = () => setTurn(turn + 1);
  const fault = value?.fault ?? error;
  return html`<${Page} title=${t('devices')} now="more" back=${{ to: '/more', says: t('more') }} ready=${state !== 'wait'}><div class="left"><section class="hello"><h1 tabindex="-1">${t('devices')}</h1></section>
    ${fault ? html`<${Offline} onAgain=${again} error=${fault} />` : value ? html`<${List} devices=${value.devices} store=${store} onAgain=${again} />` : html`<${Wait} />`}</div></${Page}>`;
}
