import { isForm } from '../../../grammar/reader/forms.ts';

/** Common English words, in their base forms: what is spelt like one of them is spelt as it was meant (from memory). */
const COMMON: ReadonlySet<string> = new Set(
  `
a an as in is it of or am are was were has had does i me us
wean taper ponder mull halve lower lessen postpone decrease pending
able abnormal about above accept acid across act actual add admit advice afraid after afternoon again against age ago agree ahead air all allow almost
alone along already also although always am among amount and anger animal ankles another answer anti any anyone anything anyway apart appear apply
appointment april area arm around arrive art ask asleep at attack august aunt autumn await aware away baby back bad bag bakery ball bank bar base bath
be bear beat beautiful because become bed been before began begin behind believe bell below bend benefit benign bent beside best better between big
bike bird birthday bit bite black blame blood board boat body bone book boots border boring born borrow both bottom bought bound bowl box boy braided
brain branch bread break breakfast breath breathe bridge bright bring broke brother brought brown brush budin build buried burn bus business busy but
buy by cake call came camp can cancel captain car card care carry case cat catch cause cent centre certain chair chance change chap charge cheap check
chest child choose church circle city clarity class clean clear clever climb clinic clock close cloth cloud coat cocked coffee cold college colour
come common company complain complete computer concern consider consult contact continue control conversion convert cook cool copy corner correct cost
could count country couple course cousin cover crack crash cream crept cross crowd cry culture cup curious curl curly current cut daily damage dance
danger dark date daughter day dead deal dear decide deep definite degree denial denied depend depth describe desk detail develop deviates diagnostic
did die differ difficult digit digital dinner direct dirty discuss dislocate distally distance divided do doc doctor dog done door dose doubt down
drain draw dream dress drift drink drive drop dry dull during each ear earth eased easily easter easy eat edge effect eight eighty either else empty
end enjoy enough enter equal especially even event ever every exact example except excision excuse exercise expect explain extends extent eye face
fact fail fair fall false family famous far farm fast fat father favour fear feed feel feet fell felt few field fight figure file fill film final find
fine finger finish fire first fish fit five fix flag flare flat floor floppy flow fluid fly fold follow fond food foot footy for force forget fork
form fortnight forward found four free fresh friend from front fruit full fully fun funny further future gain game garden gate gave general gentle get
girl give glad glass go gold golf good got gradually grass great green grew grey grind grip ground group grow growth guard guess guide hair half hall
hand handle hang happen happy hard hat hate have he head healthy hear heard heart heat heavy height held hello help her here herself hide high hill
him himself his hit hobble hold hole holiday home honest hop hope horse hospital hour house how however huge human hundred hungry hurry hurt husband
idea ill images imagine important impossible inch include indeed inner inside instead intended interest into iron island issue itself jacket job jog
join joke journey judge juice july jump june just keen keep key kick kill kind king kitchen kneel knew knife knock know known label lady lake lamp
land large last late laugh law lax lay lead lean learn least leave led left leg lend lengthening less lesson let level lie life lift light like line
linger list listen little live load long look loose lose loss lost lot loud love low luck lunch machine mad made mail main make male man manage many
map marble march mark market marry match material matter may maybe meal mean meant measure meat mechanical medical meet member memory mention message
meta metal micro mid midday middle might mile milk mind mine minus minute miss mistake mix moment money month mood moon more morning most mother
mountain mouth move much mud muscle music must my myself nails name narrow natural nature near necessary neck need neighbour neither nerve nervous
never new next nice night nine nleft node noise none noon normal north nose not note nothing notice nought now nright number nurse obvious october odd
off office often okay old once one only onto open operate operations opinion opposite orange order orthotic other ought our out outside over own pack
padding page paid pair pale paper pared parent park part party pass passages past patch path patient pay peace pen people per percent perfect perfused
perhaps period permanent person phone photo phrase pick picture piece pile pill pink pitted pitting place plain plan plane plant plate play please
plenty plus pocket point police pool poor pop popular position possible post pour power practice prefer prepare present press pretty price prick print
prison private probably probe problem produce promise proper protect proud prove proven public pull pulse pump puppy pure purple push put quarter
queen question quick quiet quite quote race radio rail rain raise ran rang range rare rate rather reach read ready real reason receive recent record
red reduce referred refuse regular relax remain remember remind removal remove rent repaired repeated replace reply report request rest result
retracted retraction return revision rice rich ride right ring rise river road rock roll roof room root rope rough round row rub rule run runners sad
safe said sail salt same sand sandal sat sausage save saw say scab scale scar school science sea search season seat second section see seem seen self
sell semi send sense sentence separate serious serve service set settle seven several shade shake shall shape share sharp she sheet shelf shift shine
ship shirt shock shoe shop short shorten shots should shout show shown shut shy side sight sign signal silent silly silver simple since sing single
sink sister sit site six size ski skill skin skips sky sleep sleeve slice slide slip slot slough slow small smell smile smoke smooth snap snow so
social sock soft soil sold sole solid solve some someone something sometimes son soon sore sorry sort sound soup south space speak special speech
speed spell spend splayed splints split spoil spoke spoken spoon sport spot sprain spread spring square stage stair stamp stand staph star stare start
state station status stay steal steel steep step stick still stone stood stop store storm story straight strange strapped street strength stress
stretch stride strike string strong student study stuff stump stupid style subject success such sudden sugar suggest suit sum sun sunday supper
support suppose sure surface surfer surprise sutured swab sweet swim switched symptom system table tackle tail take talk tall tapes taste taught tea
teach team tear tell ten tennis tension term test text than thank that the their them then there these they thick thigh thin think third thirsty
thirty this those though thought thousand three through throw thumb thus ticket tidy tie tight tile till time tin tiny tip tired tissue to today toe
together told tomorrow tone tongue tonight too took tooth top total touch toward towel town toy track tract trade train travel treat tree trial trim
trip trouble truck true trust truth try tuesday tuning tunnel turf turn twice twinge two type ugly under understand units unless unread until up upon
upset uric use useful usual valley value various very via view village visit vit vitamin voice wait wake walk wall want war ward warm warmth warn wash
waste watch water wave way we weak wear weather wedding week weepy weight welcome well went were west wet what wheel when where whether which while
white who whole whom whose why wide width wife wiggle wild will win wind window winter wire wise wish with within without wks woke woman wonder wood
wool word work world worn worry worse worst worth would write wrong year yellow yes yesterday yet you young your zero
`
    .trim()
    .split(/\s+/),
);

/** How a word may end, and what its base form has in place of that. */
const ENDINGS: readonly (readonly [ending: string, ...base: string[]])[] = [
  ['ies', 'y'],
  ['ied', 'y'],
  ['es', '', 'e'],
  ['s', ''],
  ['ed', '', 'e'],
  ['ing', '', 'e'],
  ['ly', ''],
  ['er', '', 'e'],
  ['est', '', 'e'],
];

/** Is a word one of the language or of common English, so that it is no misspelling? `drifting`, `stopped` and `under` are. */
export function isPlainWord(word: string): boolean {
  const typed = word.toLowerCase();
  return isForm(typed) || COMMON.has(typed) || ENDINGS.some(([ending, ...bases]) => isInflected(typed, ending, bases));
}

function isInflected(word: string, ending: string, bases: readonly string[]): boolean {
  if (!word.endsWith(ending)) return false;
  const stem = word.slice(0, -ending.length);
  const doubled = /(.)\1$/.test(stem) && COMMON.has(stem.slice(0, -1));
  return stem.length > 1 && (doubled || bases.some((base) => COMMON.has(stem + base)));
}
