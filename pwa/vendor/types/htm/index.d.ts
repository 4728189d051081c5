import { h, VNode, Component } from 'preact';
export * from 'preact/hooks';
declare function render(tree: VNode, parent: HTMLElement): void;
declare const html: (strings: TemplateStringsArray, ...values: any[]) => VNode;
export { h, html, render, Component };
