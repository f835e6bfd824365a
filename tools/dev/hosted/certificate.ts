/** Why a certificate is not trusted, in plain words and with what to do. */

const WORDS: Readonly<Record<string, string>> = {
  DEPTH_ZERO_SELF_SIGNED_CERT:
    "the certificate is signed by itself; get one from an authority that computers trust",
  SELF_SIGNED_CERT_IN_CHAIN:
    "the certificate comes from an authority of its own, which other computers do not know; get one from an authority that computers trust",
  UNABLE_TO_VERIFY_LEAF_SIGNATURE:
    "the certificate comes without the ones between it and its authority, or from an unknown authority; let the server send the full chain",
  UNABLE_TO_GET_ISSUER_CERT_LOCALLY:
    "the authority that signed the certificate is not known; let the server send the full chain",
  CERT_HAS_EXPIRED: "the certificate has expired; renew it",
  CERT_NOT_YET_VALID: "the certificate is not valid yet; check the clocks of both computers",
  ERR_TLS_CERT_ALTNAME_INVALID: "the certificate is for another name than this host's; get one for this name",
};

export function distrustInWords(code: string): string {
  return WORDS[code] ?? `the certificate is not trusted (${code})`;
}
