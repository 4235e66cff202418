/** The Typst templates of sheet, cover and report, which the bundler turns into texts. */

declare module '*.typ' {
  const text: string;
  export default text;
}
