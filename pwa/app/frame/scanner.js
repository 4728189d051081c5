/** The camera with its outlines, and the three other ways to say a code: type it, light, photo. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { feedback } from '../feedback.js';
import { Icon } from '../icons.js';
import { whenStill } from '../press.js';
import { t } from '../texts/index.js';
import { Act, Key } from './act.js';
import { useCamera } from './camera.js';
import { html } from './html.js';
import { Outlines } from './outlines.js';
import { FromPhoto, Lens, Light, Zoom } from './scan_ways.js';
import { TypedCode } from './typed_code.js';

/**
 * Tells of labels that were not told of just before, when nobody is touching the glass.
 * @param {(codes: string[], how: string) => void} onCodes
 * @param {() => void} onNew
 */
function useTelling(onCodes, onNew) {
  const last = useRef('');
  return async (/** @type {string[]} */ codes, /** @type {string} */ how) => {
    const key = [...codes].sort().join(' ');
    if (key === last.current || codes.length === 0) return;
    last.current = key;
    onNew();
    feedback('read');
    await whenStill();
    onCodes(codes, how);
  };
}

/** Whether there is no camera to look through. @param {{state: string}} camera */
const blind = ({ state }) => state === 'no-camera' || state === 'refused';

/** @param {{camera: any, found: boolean, onType: () => void, onCodes: (codes: string[], how: string) => void}} props */
function Ways({ camera, found, onType, onCodes }) {
  const { scan, state, setRemark } = camera;
  const without = blind(camera) ? `no-light ${found ? '' : 'no-type'}` : state;
  return html`<div class=${`ways ${without}`}><${Key} className="press" icon="i-type" label=${t('scan.type')} onPress=${onType} />
    <${Light} scan=${scan} onRemark=${setRemark} /><${FromPhoto} onCodes=${onCodes} onRemark=${setRemark} />
    <${Lens} scan=${scan} state=${state} /><${Zoom} scan=${scan} state=${state} /></div>`;
}

/** What to do when the camera cannot. @param {{camera: any, onType: () => void}} props */
function Instead({ camera, onType }) {
  const { scan, state, setRemark } = camera;
  if (state === 'dark') return html`<${Light} scan=${scan} onRemark=${setRemark} main=${true} />`;
  if (!blind(camera)) return null;
  return html`<${Act} label=${t('scan.type')} second=${t('scan.type.second')} onPress=${onType} />`;
}

/** What the camera says of itself, in one sentence. @param {any} camera @param {string | undefined} hint */
function sentence({ state, remark }, hint) {
  if (remark) return t(`scan.other.${remark}`);
  return hint && state === 'looking' ? hint : t(`scan.state.${state}`);
}

/**
 * @param {{onCodes: (codes: string[], how: string) => void, title: string, hint?: string, found?: boolean, keys?: boolean, top?: any, children?: any}} props
 *   `found`: something to act on stands in children; `keys`: opens with its keypad; `children`: the panel at the foot
 */
export function Scanner({ onCodes, title, hint, found = false, keys = false, top, children }) {
  const begun = useRef(false);
  const [typing, setTyping] = useState(keys);
  // A label read by the camera takes over from a keypad nobody has used yet.
  const tell = useTelling(onCodes, () => !begun.current && setTyping(false));
  const camera = useCamera(tell);
  const { video, state, seen, remark } = camera;
  useEffect(() => {
    if (state === 'hard' && !found) setTyping(true);
  }, [state]);
  const type = () => setTyping(true);
  const typed = (/** @type {string} */ code) => {
    setTyping(false);
    begun.current = false;
    tell([code], 'typed');
  };
  const follow = (/** @type {string} */ words) => {
    begun.current = words !== '';
  };
  const quiet = typing || (found && state === 'looking' && !remark);
  const foot = typing
    ? html`<${TypedCode} onCode=${typed} onClose=${() => setTyping(false)} onTyped=${follow} />`
    : html`<${Ways} camera=${camera} found=${found} onType=${type} onCodes=${tell} /><div class="below">${children}${!found && html`<${Instead} camera=${camera} onType=${type} />`}</div>`;
  return html`<main class="scene"><div class="picture" aria-hidden="true"><video ref=${video} playsinline muted autoplay></video><${Outlines} seen=${seen} video=${video} />${blind(camera) && html`<span class="no-eye"><${Icon} name="i-scan" /></span>`}</div>
    ${top}<h1 class=${quiet ? 'gone' : 'says-what'} tabindex="-1"><span class="gone">${title}. </span>${sentence(camera, hint)}</h1>
    <section class="found">${foot}</section></main>`;
}
