/** Texts: to be filled. */
export const texts = {};
