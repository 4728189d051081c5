/** Hands a file to the person: opened, or saved under a name. */

/** @param {Blob} blob @param {string} name */
export async function saveFile(blob, name) {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // The browser reads the blob after the click; it must live a little longer.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** The address under which a blob can be opened in another tab. @param {Blob} blob */
export const addressOf = (blob) => URL.createObjectURL(blob);
