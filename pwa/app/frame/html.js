/** Templates of the page: htm bound to preact. Their words are laid in lines that keep units whole. */
import { options } from 'preact';
import { inOneLine } from '../one_line.js';

export { html } from 'htm/preact';

/** @param {any} child what is read aloud, kept and searched stays as it was said; only the picture differs */
const laid = (child) => (typeof child === 'string' ? inOneLine(child) : child);

const before = options.vnode;
options.vnode = (vnode) => {
  const props = /** @type {any} */ (vnode.props);
  if (typeof vnode.type === 'string' && props.children !== undefined)
    props.children = Array.isArray(props.children)
      ? props.children.map(laid)
      : laid(props.children);
  before?.(vnode);
};
