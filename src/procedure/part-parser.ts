/** The Markdown parser for one part of a text, which sees the link definitions of the other parts too. */
import type {Root} from 'mdast';
import remarkFrontmatter from 'remark-frontmatter';
import remarkParse from 'remark-parse';
import {type Data, unified} from 'unified';

export interface PartRoot {
  readonly root: Root;
  /** Labels of the link definitions in the part, as the parser compares them. */
  readonly defines: readonly string[];
}

/** Lives while one text is parsed: parsers of Markdown take what they are to know before they start. */
export class PartParser {
  /** Characters parsed so far, and the most at once. */
  work = 0;
  largest = 0;
  /** Labels to be taken as defined, and the parser's own list once they are in it. */
  #given: readonly string[] = [];
  #told: readonly string[] | undefined;
  #defined: readonly string[] = [];
  readonly #parse: (text: string) => Root;

  /**
   * `frontMatter` says that the text opens with front matter which is also closed. Where it is not, the parser's
   * extension for it must stay out: looking for its end it would lose every list of the text.
   */
  constructor(frontMatter: boolean) {
    const processor = unified()
      .data({micromarkExtensions: [this.#extension()]})
      .use(remarkParse);
    if (frontMatter) processor.use(remarkFrontmatter, ['yaml']);
    processor.freeze();
    this.#parse = (text) => processor.parse(text);
  }

  /** References to the labels of `given` hold as if the text defined them. */
  parse(text: string, given: readonly string[] = []): PartRoot {
    this.#given = given;
    this.#told = undefined;
    this.#defined = [];
    this.work += text.length;
    this.largest = Math.max(this.largest, text.length);
    return {root: this.#parse(text), defines: [...this.#defined]};
  }

  /**
   * Two constructs that never match. The parser tries one where a definition may start, which shows its list of
   * defined labels; and one where a reference may start, which it does only after it has read all definitions.
   */
  #extension(): Extension {
    const watch = neverMatches((defined) => {
      this.#defined = defined;
    });
    const tell = neverMatches((defined) => {
      if (this.#told === defined) return;
      for (const label of this.#given) defined.push(label);
      this.#told = defined;
    });
    return {
      contentInitial: {[LEFT_BRACKET]: watch},
      text: {[LEFT_BRACKET]: tell, [EXCLAMATION_MARK]: tell},
    };
  }
}

/** Character codes, as the parser knows constructs by. */
const LEFT_BRACKET = 91;
const EXCLAMATION_MARK = 33;

type Extension = NonNullable<Data['micromarkExtensions']>[number];
type Constructs = NonNullable<Extension['text']>[number];

function neverMatches(look: (defined: string[]) => void): Constructs {
  return {
    partial: true,
    tokenize(_effects, _ok, nok) {
      look(this.parser.defined);
      return nok;
    },
  };
}
