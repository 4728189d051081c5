/** Units as words for the ear, and names of lubricant states. */

/** @type {Record<string, string>} */
export const spoken = {
  N·m: 'newton-metres',
  lbf·ft: 'pound-feet',
  lbf·in: 'pound-inches',
  kgf·m: 'kilogram-metres',
  '°': 'degrees',
  mm: 'millimetres',
  in: 'inches',
};

export const texts = {
  'unit.chosen': 'Your other unit',
};
