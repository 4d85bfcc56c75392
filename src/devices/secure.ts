/**
 * False when the page came from an address without a secure context: then there is no microphone, no work offline, no lock
 * and no lasting storage, and the app is not for use. https and localhost are secure.
 */
export function isSecure(place: { isSecureContext?: boolean } = globalThis): boolean {
  return place.isSecureContext === true;
}
