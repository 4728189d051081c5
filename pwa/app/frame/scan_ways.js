/** Light, photo, lens, zoom: what helps the camera, as far as this one has it. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { readImage } from '../../scan/index.js';
import { feedback } from '../feedback.js';
import { t } from '../texts/index.js';
import { Act, Key } from './act.js';
import { html } from './html.js';
import { say } from './live.js';

/** The largest step of the zoom key. */
const CLOSEST = 4;

/** @typedef {{current: any}} ScanRef */
/** @typedef {(remark: string) => void} Remark shows a sentence for a moment */

/**
 * The light, where the lens has one; as main action when it is dark.
 * @param {{scan: ScanRef, onRemark: Remark, main?: boolean}} props
 */
export function Light({ scan, onRemark, main }) {
  const [on, setOn] = useState(false);
  const turn = async () => {
    const has = await scan.current?.setTorch(!on);
    if (has) setOn(!on);
    else onRemark('no-light');
  };
  if (main)
    return html`<${Act} label=${t('scan.light')} second=${t('scan.dark')} onPress=${turn} />`;
  return html`<${Key} className="press" icon="i-light" label=${t('scan.light')} pressed=${on} onPress=${turn} />`;
}

/** Reads labels from a photo. @param {{onCodes: (codes: string[], how: string) => void, onRemark: Remark}} props */
export function FromPhoto({ onCodes, onRemark }) {
  const input = useRef(/** @type {HTMLInputElement | null} */ (null));
  const none = () => {
    feedback('wrong');
    onRemark('none');
    say(t('scan.other.none'));
  };
  const read = async () => {
    const file = input.current?.files?.[0];
    if (!file) return;
    const codes = (await readImage(file)).map(({ code }) => code);
    if (input.current) input.current.value = '';
    if (codes.length > 0) onCodes(codes, 'photo');
    else none();
  };
  return html`<${Key} className="press" icon="i-photo" label=${t('scan.photo')} onPress=${() => input.current?.click()} />
    <input ref=${input} type="file" accept="image/*" hidden onChange=${read} />`;
}

/** Another lens, where there are several. @param {{scan: ScanRef, state: string}} props */
export function Lens({ scan, state }) {
  const [lenses, setLenses] = useState(/** @type {{id: string, name: string}[]} */ ([]));
  const [at, setAt] = useState(0);
  useEffect(() => {
    if (state === 'looking') scan.current?.lenses().then(setLenses);
  }, [state]);
  if (lenses.length < 2) return null;
  const next = () => {
    const turn = (at + 1) % lenses.length;
    setAt(turn);
    return scan.current?.useLens(lenses[turn]?.id);
  };
  const spoken = t('scan.lens.spoken', { name: lenses[at]?.name ?? '' });
  return html`<${Key} className="press" icon="i-scan" label=${t('scan.lens')} spoken=${spoken} onPress=${next} />`;
}

/** Closer, where the lens can. @param {{scan: ScanRef, state: string}} props */
export function Zoom({ scan, state }) {
  const [times, setTimes] = useState(1);
  const range = state === 'starting' ? null : scan.current?.abilities?.().zoom;
  if (!range || range.max < 2) return null;
  const far = Math.max(1, range.min);
  const next = times * 2 > Math.min(CLOSEST, range.max) ? far : times * 2;
  const turn = async () => {
    if (await scan.current.setZoom(next)) setTimes(next);
  };
  return html`<${Key} className="press" icon="i-find" label=${t('scan.zoom', { times: next })} onPress=${turn} />`;
}
