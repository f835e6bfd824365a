/** The second and third what-if of a sheet are made by the same rows as the first: what is tried on that holds for them. */

export function isFurtherWhatIf(name: string): boolean {
  return /_[cd]$/.test(name);
}
