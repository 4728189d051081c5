/* Measures one screen as it stands and gives what breaks the rules, one sentence each.
   Evaluated in the page with {desk, gap, touch, main}. */
(rule) => {
  const findings = [];
  const wide = innerWidth;
  const high = innerHeight;
  const seen = (element) => {
    const box = element.getBoundingClientRect();
    const hidden = element.disabled || element.closest('.gone, [hidden], dialog:not([open])');
    return !hidden && box.width > 1 && box.height > 1 && getComputedStyle(element).visibility !== 'hidden';
  };
  const name = (element) =>
    `${element.tagName.toLowerCase()}.${element.className} "${(element.getAttribute('aria-label') || element.textContent).trim().slice(0, 30)}"`;
  const pressable = 'a[href], button, input, select, textarea, summary, [role=button], [tabindex="0"]';
  const open = document.querySelector('dialog[open]');
  const targets = [...(open ?? document).querySelectorAll(pressable)].filter(seen);
  const boxes = targets.map((element) => ({ element, box: element.getBoundingClientRect() }));

  const actions = [...(open ?? document).querySelectorAll('.act')].filter(seen);
  if (actions.length > 1) findings.push(`${actions.length} main actions`);
  for (const action of actions) {
    const { top, bottom, height, width } = action.getBoundingClientRect();
    if (height < rule.main) findings.push(`main action ${height} px high`);
    if (rule.desk) continue;
    const middle = (top + bottom) / 2;
    if (!open && (middle < (high * 2) / 3 || middle > high)) findings.push(`main action at ${middle} of ${high}`);
    if (width < wide - 64) findings.push(`main action ${width} px wide`);
  }

  const skin = 0.1;
  for (const { element, box } of boxes) {
    if (box.width < rule.touch - skin || box.height < rule.touch - skin)
      findings.push(`${Math.round(box.width)} × ${Math.round(box.height)} px: ${name(element)}`);
    if (!rule.desk && (box.left < 16 - skin || box.right > wide - 16 + skin))
      findings.push(`in the edge of the glass: ${name(element)}`);
  }
  const apart = (one, two) => {
    const across = Math.max(one.left - two.right, two.left - one.right);
    const down = Math.max(one.top - two.bottom, two.top - one.bottom);
    return Math.max(across, down);
  };
  const together = (one, two) => {
    if (one.contains(two) || two.contains(one)) return true;
    if (one.closest('.doors') && two.closest('.doors')) return true;
    if (one.matches('.row') && two.matches('.row')) return true;
    // What lies under the dock, the deck and the doors scrolls away from them.
    return one.closest('.dock, .deck, .doors') !== two.closest('.dock, .deck, .doors');
  };
  for (const [at, one] of boxes.entries()) {
    for (const two of boxes.slice(at + 1)) {
      if (together(one.element, two.element)) continue;
      const gap = apart(one.box, two.box);
      if (gap < rule.gap - skin) findings.push(`${gap.toFixed(1)} px between ${name(one.element)} and ${name(two.element)}`);
    }
  }

  if (document.documentElement.scrollWidth > document.documentElement.clientWidth)
    findings.push(`${document.documentElement.scrollWidth} px wide`);
  for (const element of document.querySelectorAll('h1, h2, h3, p, span, b, a, button, dt, dd, li, time')) {
    if (!seen(element)) continue;
    const style = getComputedStyle(element);
    if (style.display !== 'inline' && element.clientWidth > 0 && element.scrollWidth > element.clientWidth + 1)
      findings.push(`cut off: ${name(element)}`);
    const ownText = [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent.trim());
    if (ownText && Number.parseFloat(style.fontSize) < 16) findings.push(`${style.fontSize}: ${name(element)}`);
  }
  if (document.getAnimations().length > 0) findings.push('something moves');
  return [...new Set(findings)];
}
