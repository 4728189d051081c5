/** The one main action of a screen, and the quieter presses beside it. */
import { Icon } from '../icons.js';
import { usePress } from '../press.js';
import { html } from './html.js';

const bolt = () => html`<svg class="bolt" viewBox="0 0 60 60" aria-hidden="true">
  <polygon points="51,33 39,53.8 15,53.8 3,33 15,12.2 39,12.2" />
  <path d="M47.5 2.5h10.5L40.5 32.5H30z" /></svg>`;

/** @param {{label: any, second?: any}} props */
const words = ({ label, second }) => html`<span class="says"><b>${label}</b>
  ${second && html`<span class="second">${second}</span>`}</span>${bolt()}`;

/**
 * @typedef {object} ActProps
 * @property {any} label
 * @property {any} [second]
 * @property {string} [href] goes somewhere; else onPress does something
 * @property {(event: Event) => unknown} [onPress]
 * @property {boolean} [disabled]
 * @property {boolean} [confirm] 104 px high, and deaf after it kept something
 * @property {string} [spoken] its name for a screen reader
 * @property {string} [className]
 */

/**
 * The main action, as a link when it only goes somewhere.
 * @param {ActProps} props
 */
export function Act(props) {
  return props.href ? html`<${ActLink} ...${props} />` : html`<${ActKey} ...${props} />`;
}

/** @param {ActProps} props */
function ActLink({ href, label, second, spoken, className = '' }) {
  return html`<a class=${`act ${className}`} href=${href} aria-label=${spoken}>${words({ label, second })}</a>`;
}

/** @param {ActProps} props */
function ActKey({ label, second, onPress, disabled, confirm, spoken, className = '' }) {
  const { props, state } = usePress(onPress ?? (() => {}), { confirm, disabled });
  const kind = `act ${confirm ? 'confirm' : ''} ${className}`;
  return html`<button type="button" class=${kind} disabled=${disabled} aria-label=${spoken} data-press=${state} ...${props}>
    ${words({ label, second })}</button>`;
}

/** The main action's place at the foot of the screen. @param {{children?: any}} props */
export const Dock = ({ children }) => html`<div class="dock">${children}</div>`;

/**
 * A quieter press: a key, or a link when it has an address.
 * @param {{label: any, icon?: string, href?: string, onPress?: (event: Event) => unknown,
 *   className?: string, pressed?: boolean, spoken?: string, id?: string, disabled?: boolean}} props
 */
export function Key(props) {
  const { label, icon, href, spoken, className = 'second-act press', id } = props;
  const inside = html`${icon && html`<${Icon} name=${icon} />`}<span>${label}</span>`;
  if (href)
    return html`<a id=${id} class=${className} href=${href} aria-label=${spoken}>${inside}</a>`;
  return html`<${PlainKey} ...${{ ...props, className, inside }} />`;
}

/** @param {any} props */
function PlainKey({ inside, onPress, className, pressed, spoken, id, disabled }) {
  const { props, state } = usePress(onPress ?? (() => {}), { disabled });
  const on = pressed === undefined ? undefined : String(pressed);
  return html`<button type="button" id=${id} class=${className} aria-pressed=${on} aria-label=${spoken} disabled=${disabled}
    data-press=${state} ...${props}>${inside}</button>`;
}
