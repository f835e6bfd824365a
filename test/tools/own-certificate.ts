/** A certificate for localhost that signs itself, as people make one for a server of their own; written out in DER. */

import { createSign, generateKeyPairSync } from "node:crypto";

export interface OwnCertificate {
  readonly key: string;
  readonly cert: string;
}

const der = (tag: number, ...parts: readonly Buffer[]): Buffer => {
  const content = Buffer.concat(parts);
  const { length } = content;
  const size = length < 128 ? [length] : length < 256 ? [0x81, length] : [0x82, length >> 8, length & 255];
  return Buffer.concat([Buffer.from([tag, ...size]), content]);
};
const sequence = (...parts: readonly Buffer[]): Buffer => der(0x30, ...parts);
const hex = (digits: string): Buffer => Buffer.from(digits, "hex");

/** Object identifiers, in DER: ecdsa-with-SHA256, commonName, subjectAltName. */
const SIGNED_WITH = sequence(hex("06082a8648ce3d040302"));
const COMMON_NAME = hex("0603550403");
const OTHER_NAMES = hex("0603551d11");

/** Valid from 2020 to 2049. */
export function ownCertificate(): OwnCertificate {
  const { privateKey, publicKey } = generateKeyPairSync("ec", { namedCurve: "P-256" });
  const name = sequence(der(0x31, sequence(COMMON_NAME, der(0x0c, Buffer.from("localhost")))));
  const years = sequence(der(0x17, Buffer.from("200101000000Z")), der(0x17, Buffer.from("491231235959Z")));
  const alternatives = sequence(der(0x82, Buffer.from("localhost")));
  const extensions = der(0xa3, sequence(sequence(OTHER_NAMES, der(0x04, alternatives))));
  const content = sequence(
    der(0xa0, hex("020102")),
    hex("020101"),
    SIGNED_WITH,
    name,
    years,
    name,
    publicKey.export({ type: "spki", format: "der" }),
    extensions,
  );
  const signature = createSign("sha256").update(content).sign(privateKey);
  const certificate = sequence(content, SIGNED_WITH, der(0x03, Buffer.from([0]), signature));
  const lines = certificate.toString("base64").match(/.{1,64}/g) ?? [];
  return {
    key: privateKey.export({ type: "pkcs8", format: "pem" }).toString(),
    cert: ["-----BEGIN CERTIFICATE-----", ...lines, "-----END CERTIFICATE-----", ""].join("\n"),
  };
}
