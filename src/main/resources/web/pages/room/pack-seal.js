// Opens what the service sealed: a flattened JSON Web Signature (RFC 7515) by Ed25519 (RFC 8037), checked by the browser's own
// Web Crypto before a word of it is used.

const TYPE = 'wallchart-pack+jws';

/** Why a pack is not used: a stable `code`, and words for people as the message. */
export class PackRefused extends Error {
  constructor(code, message, cause) {
    super(message, { cause });
    this.code = code;
  }
}

/**
 * Opens `{payload, protected, signature}` and resolves to `{key, issuedAt, content}`: the public key it was signed with, when it was
 * given out, and the pack. With `knownKey` no other key will do. Rejects with `PackRefused`.
 */
export async function opened(sealed, knownKey) {
  if (!globalThis.crypto?.subtle) {
    throw new PackRefused('no-crypto', 'this browser checks no signatures here: open the page over https, in a current browser');
  }
  const { header, signature, signed } = readable(sealed);
  if (knownKey && header.jwk.x !== knownKey) {
    throw new PackRefused('other-key', 'the service signs with another key than the one that this page got to know: ask the administrator '
      + "whether the service was set up anew. If so, give the room's token once more; if not, use the sheet on the wall");
  }
  if (!(await fits(header.jwk, signature, signed))) throw damaged();
  return { key: header.jwk.x, issuedAt: header.issuedAt, content: await unpacked(sealed.payload) };
}

const damaged = (cause) => new PackRefused('damaged', 'what came as a pack is damaged, or was not signed by the service: it is not used', cause);

function readable(sealed) {
  try {
    const header = JSON.parse(new TextDecoder().decode(bytes(sealed.protected)));
    const { alg, typ, cty, jwk, issuedAt } = header;
    if (alg !== 'EdDSA' || typ !== TYPE || cty !== 'gzip' || 'crit' in header) throw new Error('another kind of thing');
    if (jwk.kty !== 'OKP' || jwk.crv !== 'Ed25519' || Number.isNaN(Date.parse(issuedAt))) throw new Error('no key, or no instant');
    const signed = new TextEncoder().encode(`${sealed.protected}.${sealed.payload}`);
    return { header, signature: bytes(sealed.signature), signed };
  } catch (failed) {
    throw damaged(failed);
  }
}

/** Whether the signature is that of this key. */
export async function fits({ kty, crv, x }, signature, signed) {
  let key;
  try {
    key = await crypto.subtle.importKey('jwk', { kty, crv, x }, { name: 'Ed25519' }, false, ['verify']);
  } catch (failed) {
    if (failed.name === 'NotSupportedError') {
      throw new PackRefused('no-crypto', 'this browser does not know Ed25519 signatures: bring it up to date', failed);
    }
    throw damaged(failed);
  }
  return crypto.subtle.verify({ name: 'Ed25519' }, key, signature, signed);
}

async function unpacked(payload) {
  try {
    const stream = new Blob([bytes(payload)]).stream().pipeThrough(new DecompressionStream('gzip'));
    return JSON.parse(await new Response(stream).text());
  } catch (failed) {
    throw damaged(failed);
  }
}

/** What base64url (RFC 4648 section 5, without padding) stands for. */
export function bytes(text) {
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (one) => one.charCodeAt(0));
}
