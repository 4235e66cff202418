/** The engine that the findings about branches and repeats share as an example. */

export const LOOP_ENGINE = `
parts:
  block: {given: true}
  crankshaft: {}
fits:
  end-play: {between: [block, crankshaft], limits: 0.003–0.009 in, using: [feeler-gauges], when: {installed: [crankshaft], tight: []}}
`;

export const LOOP_RIGHT = `
1. Lower the crankshaft in. \`install: crankshaft\` \`step: crankshaft-in\`
2. Read the end play. \`measure: end-play using feeler-gauges\`
3. Where it is out, change the thrust ring: \`if: end-play is out\`
   1. Lift the crankshaft out. \`remove: crankshaft\`
   2. Go back and try the next ring. \`repeat: crankshaft-in\`
`;
