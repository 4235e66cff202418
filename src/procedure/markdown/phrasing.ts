/** What the tokens in a line of text add to the tree: text, code, emphasis, links, pictures, breaks. */
import type {Emphasis, Image, ImageReference, Link, LinkReference, Strong} from 'mdast';
import {toString as plainText} from 'mdast-util-to-string';
import {decodeString} from 'micromark-util-decode-string';
import {addText, close, endValue, gather, identifierOf} from './blocks.js';
import type {Building, Handlers, Media} from './building.js';
import {positionOf, type Token} from './events.js';

export const PHRASES_BEGIN: Handlers = {
  data: addText,
  codeTextData: addText,
  htmlTextData: addText,
  characterEscape(building, token, context) {
    building.text(token, building.textOf(token, context).slice(1));
  },
  characterReference(building, token, context) {
    building.text(token, decodeString(building.textOf(token, context)));
  },
  codeText(building, token) {
    building.open({type: 'inlineCode', value: '', position: positionOf(token)});
    building.gathered = '';
  },
  htmlText(building, token) {
    building.open({type: 'html', value: '', position: positionOf(token)});
    building.gathered = '';
  },
  emphasis(building, token) {
    const node: Emphasis = {type: 'emphasis', children: [], position: positionOf(token)};
    building.open(node, node.children, true);
  },
  strong(building, token) {
    const node: Strong = {type: 'strong', children: [], position: positionOf(token)};
    building.open(node, node.children, true);
  },
  hardBreakEscape: addBreak,
  hardBreakTrailing: addBreak,
  autolink(building, token) {
    const node: Link = {type: 'link', title: null, url: '', children: [], position: positionOf(token)};
    building.open(node, node.children);
  },
  autolinkProtocol(building, token, context) {
    addText(building, token, context);
    const {node} = building;
    if (node?.type === 'link') node.url = building.textOf(token, context);
  },
  autolinkEmail(building, token, context) {
    addText(building, token, context);
    const {node} = building;
    if (node?.type === 'link') node.url = `mailto:${building.textOf(token, context)}`;
  },
  link: beginMedia,
  image: beginMedia,
  // Whether the brackets make a link, a picture or plain text is known only behind them.
  label(building) {
    building.open(undefined, building.media.at(-1)?.inside, true);
  },
  reference(building) {
    const media = building.media.at(-1);
    if (media) media.reference = 'collapsed';
  },
  referenceString: gather,
  resourceDestinationString: gather,
  resourceTitleString: gather,
};

export const PHRASES_END: Handlers = {
  codeText: (building) => endValue(building, (text) => text),
  htmlText: (building) => endValue(building, (text) => text),
  emphasis: close,
  strong: close,
  autolink: close,
  labelText(building, token, context) {
    const media = building.media.at(-1);
    if (media === undefined) return;
    // It may go over several lines, and what begins those lines is no part of it.
    const label = context.sliceSerialize(token);
    media.label = decodeString(label);
    media.identifier = identifierOf(label);
  },
  // Until something behind the brackets says more: the brackets alone refer to a definition.
  label(building) {
    building.close();
    const media = building.media.at(-1);
    if (media) media.reference = 'shortcut';
  },
  referenceString(building, token, context) {
    const media = building.media.at(-1);
    const label = building.taken();
    if (media === undefined) return;
    media.label = label;
    media.identifier = identifierOf(context.sliceSerialize(token));
    media.reference = 'full';
  },
  resourceDestinationString(building) {
    const media = building.media.at(-1);
    const url = building.taken();
    if (media) media.url = url;
  },
  resourceTitleString(building) {
    const media = building.media.at(-1);
    const title = building.taken();
    if (media) media.title = title;
  },
  resource(building) {
    const media = building.media.at(-1);
    if (media) media.reference = undefined;
  },
  link(building, token) {
    const media = endMedia(building);
    if (media) building.add(linkOf(media, token));
  },
  image(building, token) {
    const media = endMedia(building);
    if (media) building.add(imageOf(media, token));
  },
};

function addBreak(building: Building, token: Token): void {
  building.add({type: 'break', position: positionOf(token)});
  building.atBreak = true;
}

/** What stands in its brackets is kept apart until its end. */
function beginMedia(building: Building): void {
  building.media.push({label: '', identifier: '', url: '', title: null, inside: [], reference: undefined});
  building.open(undefined);
}

function endMedia(building: Building): Media | undefined {
  building.close();
  return building.media.pop();
}

function linkOf(
  {inside, label, identifier, url, title, reference}: Media,
  token: Token,
): Link | LinkReference {
  const position = positionOf(token);
  if (reference === undefined) return {type: 'link', title, url, children: inside, position};
  return {type: 'linkReference', children: inside, position, label, identifier, referenceType: reference};
}

function imageOf(
  {inside, label, identifier, url, title, reference}: Media,
  token: Token,
): Image | ImageReference {
  const alt = plainText(inside);
  const position = positionOf(token);
  if (reference === undefined) return {type: 'image', title, url, alt, position};
  return {type: 'imageReference', alt, position, label, identifier, referenceType: reference};
}
