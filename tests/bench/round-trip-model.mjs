/** How the words of the trade that the recogniser's dictionary lacks are pronounced, in its alphabet; from memory. */
export const PRONOUNCED = [
  'antalgic AE N T AE L JH IH K',
  'apixaban AH P IH K S AH B AE N',
  'bunion B AH N Y AH N',
  'dorsalis D AO R S AE L IH S',
  'dorsiflexion D AO R S IH F L EH K SH AH N',
  'hallux HH AE L AH K S',
  'medially M IY D IY AH L IY',
  'metatarsal M EH T AH T AA R S AH L',
  'metformin M EH T F AO R M IH N',
  'monofilament M AA N OW F IH L AH M AH N T',
  'neuroma N UH R OW M AH',
  'nought N AO T',
  'osteotomy AA S T IY AA T AH M IY',
  'pedis P EH D IH S',
  'plantar P L AE N T ER',
  'semicolon S EH M IY K OW L AH N',
  'tibial T IH B IY AH L',
  'valgus V AE L G AH S',
];

/** A language model of word pairs in the ARPA form, with a tenth of each word's weight left for what was not seen. */
export function bigramModel(sentences) {
  const [ones, twos] = [new Map(), new Map()];
  const add = (map, key) => map.set(key, (map.get(key) ?? 0) + 1);
  for (const sentence of sentences) {
    const words = ['<s>', ...sentence.split(/\s+/), '</s>'];
    words.forEach((word, i) => {
      add(ones, word);
      if (i > 0) add(twos, `${words[i - 1]} ${word}`);
    });
  }
  const total = [...ones.values()].reduce((a, b) => a + b, 0);
  const log = (share) => Math.log10(share).toFixed(4);
  const followed = new Map();
  for (const [pair, count] of twos) {
    const [first] = pair.split(' ');
    followed.set(first, (followed.get(first) ?? 0) + count);
  }
  const single = [...ones].map(([word, count]) => `${word === '<s>' ? -99 : log(count / total)} ${word} ${log(0.4)}`);
  const pairs = [...twos].map(([pair, count]) => `${log((0.6 * count) / followed.get(pair.split(' ')[0]))} ${pair}`);
  return `\\data\\\nngram 1=${single.length}\nngram 2=${pairs.length}\n\n\\1-grams:\n${single.join('\n')}\n\n\\2-grams:\n${pairs.join('\n')}\n\n\\end\\\n`;
}
