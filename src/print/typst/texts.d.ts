/** The Typst templates of sheet and cover, which the bundler turns into texts. */

declare module '*.typ' {
  const text: string;
  export default text;
}
