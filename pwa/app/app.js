/** The screen of the place where the person is, and what is true on every screen. */
import { Component } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { readWedge } from '../scan/index.js';
import { feedback } from './feedback.js';
import { html } from './frame/html.js';
import { Empty, Icon, Page, Sheet, Wait } from './frame/index.js';
import { Live, say } from './frame/live.js';
import { StoreGiver } from './frame/store.js';
import { notKept } from './keeping.js';
import { wake } from './press.js';
import { back, go, open, place } from './router.js';
import { hasDoors, loadScreen, matchRoute, screenOf } from './routes.js';
import { t } from './texts/index.js';

/**
 * Something could not be shown: what is so, and what to do next.
 * @param {{what: string}} props
 */
export function Broken({ what }) {
  return html`<${Page} title=${t(`broken.${what}`)} className="list"><div class="left">
    <section class="hello"><h1 tabindex="-1">${t(`broken.${what}`)}</h1></section>
    <${Empty} icon="i-caution" says=${t(`broken.${what}.means`)} then=${t(`broken.${what}.next`)} /></div></${Page}>`;
}

/** Keeps a fault of one screen to that screen. */
class Guard extends Component {
  state = { fault: false };

  /** @param {unknown} error */
  componentDidCatch(error) {
    this.setState({ fault: true });
    reportError(error);
  }

  render() {
    const { children } = /** @type {{children?: any}} */ (this.props);
    return this.state.fault ? html`<${Broken} what="screen" />` : children;
  }
}

/** Loads the screen of an address; known ones are there at once. @param {string} name */
function useScreen(name) {
  const [, again] = useState(0);
  const [fault, setFault] = useState('');
  const known = screenOf(name);
  useEffect(() => {
    if (known) return;
    loadScreen(name).then(
      () => again((n) => n + 1),
      (error) => {
        setFault(name);
        reportError(error);
      },
    );
  }, [name]);
  return { screen: known, fault: fault === name };
}

/** A wedge reader opens a record from any screen. */
function useWedge() {
  useEffect(
    () =>
      readWedge(document, (code) => {
        feedback('read');
        say(t('scan.read', { code }));
        open(`/L/${code}`);
      }),
    [],
  );
}

/** Escape leaves a screen the way its back leads. @param {KeyboardEvent} stroke */
function leaveByKey(stroke) {
  if (stroke.key !== 'Escape' || stroke.defaultPrevented || document.querySelector('dialog[open]'))
    return;
  if (document.querySelector('[data-back]')) back();
}

/**
 * The whole page.
 * @param {{store: any}} props
 */
export function App({ store }) {
  const { path, query } = place.value;
  const { name, params } = matchRoute(path);
  const { screen, fault } = useScreen(name);
  useWedge();
  useEffect(() => {
    document.addEventListener('keydown', leaveByKey);
    return () => document.removeEventListener('keydown', leaveByKey);
  }, []);
  useEffect(wake, [path]);
  const all = { ...query, ...params };
  return html`<${StoreGiver} value=${store}>
    <${Guard} key=${path}>${shownScreen({ screen, fault, path, all, store, quiet: !hasDoors(name) })}</${Guard}>
    <${Trouble} /><${Live} /></${StoreGiver}>`;
}

/** What was not kept is said until it is answered; the form behind it stays as it is. */
function Trouble() {
  if (notKept.value === '') return null;
  const answer = () => {
    notKept.value = '';
  };
  return html`<${Sheet} title=${t('not-kept.title')} onClose=${answer}><div class="panel"><${Icon} name="i-caution" /><p>${notKept.value}</p></div></${Sheet}>`;
}

/** @param {{screen: any, fault: boolean, path: string, all: Record<string, string>, store: any, quiet: boolean}} what */
function shownScreen({ screen, fault, path, all, store, quiet }) {
  if (fault) return html`<${Broken} what="load" />`;
  if (!screen)
    return html`<${Page} title="" ready=${false} quiet=${quiet}><div class="left"><${Wait} /></div></${Page}>`;
  return html`<${screen} key=${path} params=${all} store=${store} go=${go} back=${back} />`;
}
