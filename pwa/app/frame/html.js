/** Templates of the page: htm bound to preact. */
export { html } from 'htm/preact';
