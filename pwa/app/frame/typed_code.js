/** Eight signs typed by hand: the page's own keys, and any keyboard. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { parse } from '../../trade/label.js';
import { feedback } from '../feedback.js';
import { Icon } from '../icons.js';
import { Press } from '../press.js';
import { t } from '../texts/index.js';
import { Act } from './act.js';
import { html } from './html.js';
import { codeGroups } from './told.js';

const signs = [...'1234567890ABCDEFGHJKMNPQRSTVWXYZ'];
const length = 8;

/** Signs of the alphabet; I, L and O are what they look like. @param {string} text */
function cleaned(text) {
  const alike = { I: '1', L: '1', O: '0' };
  return [...text.toUpperCase()]
    .map((sign) => alike[/** @type {'I'} */ (sign)] ?? sign)
    .filter((sign) => signs.includes(sign))
    .join('');
}

/** The code when its last sign fits, else null. @param {string} typed */
function checked(typed) {
  try {
    return parse(typed);
  } catch {
    return null;
  }
}

/** A whole address typed or pasted means its code. @param {string} text */
const fromField = (text) =>
  cleaned(text.includes('/') ? text.slice(text.lastIndexOf('/') + 1) : text).slice(0, length);

/** @param {{onSign: (sign: string) => void, onErase: () => void, onClose: () => void}} props */
function Signs({ onSign, onErase, onClose }) {
  return html`<div class="signs" role="group" aria-label=${t('type.signs')}>
    ${signs.map((sign) => html`<${Press} key=${sign} typing=${true} class="press" onPress=${() => onSign(sign)}>${sign}</${Press}>`)}
    <${Press} typing=${true} class="press erase" aria-label=${t('type.erase')} onPress=${onErase}><${Icon} name="i-erase" /></${Press}>
    <${Press} class="press wide-key" onPress=${onClose}><${Icon} name="i-scan" />${t('type.camera')}</${Press}></div>`;
}

/**
 * @param {{onCode: (code: string) => void, onClose: () => void, onTyped?: (typed: string) => void, label?: string}} props
 */
export function TypedCode({ onCode, onClose, onTyped, label = t('type.open') }) {
  const [typed, setTyped] = useState('');
  const field = useRef(/** @type {HTMLInputElement | null} */ (null));
  const whole = typed.length === length;
  const code = whole ? checked(typed) : null;
  useEffect(() => {
    field.current?.focus({ preventScroll: true });
  }, []);
  useEffect(() => onTyped?.(typed), [typed]);
  useEffect(() => {
    if (whole && !code) feedback('wrong');
  }, [whole, code]);
  const send = () => {
    if (code) onCode(code);
  };
  const shown = typed.length > 4 ? codeGroups(typed) : typed;
  return html`<form class="sheet typed-code" onSubmit=${(/** @type {Event} */ event) => {
    event.preventDefault();
    send();
  }}><label><span class="gone">${t('type.field')}</span>
    <input ref=${field} value=${shown} inputmode="none" autocomplete="off" autocapitalize="characters" spellcheck=${false} enterkeyhint="go"
      aria-describedby="typed-tell" onInput=${(/** @type {any} */ event) => setTyped(fromField(event.target.value))} /></label>
    <p id="typed-tell" class=${whole && !code ? 'tell' : 'soft'} role="status">${tellOf(typed, whole, code)}</p>
    ${
      code
        ? html`<${Act} label=${label} second=${codeGroups(code)} onPress=${send} />`
        : html`<${Signs} onSign=${(/** @type {string} */ sign) => setTyped(cleaned(typed + sign).slice(0, length))} onErase=${() => setTyped(typed.slice(0, -1))} onClose=${onClose} />`
    }
    ${code && html`<div class="signs"><${Press} typing=${true} class="press wide-key whole" onPress=${() => setTyped(typed.slice(0, -1))}><${Icon} name="i-erase" />${t('type.erase')}</${Press}></div>`}</form>`;
}

/** @param {string} typed @param {boolean} whole @param {string | null} code */
function tellOf(typed, whole, code) {
  if (whole) return t(code ? 'type.fits' : 'type.wrong');
  return t('type.left', { n: length - typed.length });
}
