/** The files of the starting book, which the bundler turns into texts. */

declare module '*.md' {
  const text: string;
  export default text;
}

declare module '*.yaml' {
  const text: string;
  export default text;
}
