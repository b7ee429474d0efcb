import { COURSE } from './course.ts';
import type { Said } from './index.ts';
import { orders } from './words-of.ts';

const leaving = (...names: readonly string[]): string[] =>
  orders(
    [
      ...['refrain from', 'lay off', 'keep off', 'stay off', 'hold off', 'abstain from', 'leave out', 'cut out'],
      ...['keep away from', 'stay away from', 'a break from', 'take a break from'],
    ],
    ...names,
  );
const resuming = (...names: readonly string[]): string[] =>
  orders(
    [
      ...['can start', 'can resume', 'can restart', 'gradual return to', 'graded return to', 'can return to'],
      ...['ease back into', 'build back up to', 'can go back to', 'get back to', 'can get back to', 'reintroduce'],
      ...['resume'],
    ],
    ...names,
  );

/** What is advised: exercises, rest, load, and what is left out or taken up again. */
export const ADVISED: Said = {
  physiotherapy: {
    finding: {
      'physiotherapy range of motion': [
        ...['moving the toe', 'toe movements', 'mobilising the toe', 'mobilizing the toe', 'mobilising the joint'],
        ...['toe mobilisation', 'toe mobilization', 'toe movement exercises', 'range of movement exercises'],
        ...['toe range of motion'],
      ],
      'physiotherapy scar massage': ['massaging the scar'],
      'physiotherapy strength': ['toe strengthening exercises', 'toe strengthening', 'strengthening'],
      'physiotherapy intrinsic muscles': [
        ...['intrinsic strengthening', 'short foot exercises', 'foot intrinsic exercises'],
        ...['intrinsic foot exercises', 'intrinsic muscle exercises'],
      ],
      'physiotherapy gait': ['gait retraining', 'gait re education', 'gait reeducation'],
      'plan physiotherapy': [
        ...orders(
          [...['refer for', 'send for', 'refer to', 'send to', 'needs', 'needs some', 'course of'], ...['get some']],
          ...['physiotherapy', 'physical therapy'],
        ),
        ...['physiotherapy referral', 'physical therapy referral', 'p t referral', 'physiotherapy input'],
        ...['pt referral'],
      ],
      'plan physiotherapy range of motion': [
        ...['mobilise the toe', 'mobilize the toe', 'mobilise the joint', 'mobilize the joint', 'get the toe moving'],
        ...['bend the toe daily'],
        ...[],
        ...['keep the toe moving'],
      ],
      'plan physiotherapy scar massage': [...['massage the scar', 'massage scar']],
      'plan physiotherapy strength': ['strengthen the toe'],
      'plan physiotherapy gait': [],
      'tried physiotherapy': [
        ...['does her exercises', 'does his exercises', 'does the exercises', 'attends physiotherapy'],
        ...['attended physiotherapy'],
      ],
    },
    value: {
      ...COURSE,
      strength: [
        ...['strength work', 'strengthening work', 'toe strengthening', 'muscle strengthening'],
        ...['strengthening exercises', 'strengthen'],
      ],
      'intrinsic muscles': [
        ...['intrinsic strengthening', 'foot intrinsics', 'small muscles of the foot', 'intrinsic work'],
        ...['short foot exercises'],
      ],
      'range of motion': [
        ...['mobilisation', 'mobilization', 'range of movement', 'toe mobilisation', 'mobility work'],
        ...['movement exercises', 'mobilising'],
      ],
      gait: ['gait re education', 'gait reeducation', 'gait retraining', 'gait work', 'walking pattern'],
      balance: ['balance work', 'balance training', 'balance exercises'],
      'scar massage': ['scar work', 'scar tissue massage', 'massage of the scar', 'massage the scar'],
    },
  },
  'rest-and-cold': {
    finding: {
      ice: ['ice packs', 'ice pack', 'cold packs', 'cold pack', 'cold compress', 'cold compresses'],
      elevation: ['high elevation', 'strict elevation'],
      'plan elevation': [
        ...orders(['elevate', 'raise', 'prop up'], 'foot', 'leg', 'the foot', 'the leg', 'the limb'),
        ...orders(
          ['keep the', 'keep', 'keep her', 'keep his'],
          ...['foot up', 'leg up', 'foot elevated', 'leg elevated', 'foot raised', 'feet up'],
        ),
        ...['keep elevated', 'keep it elevated', 'elevate it', 'put the foot up', 'put the feet up', 'put her foot up'],
      ],
      'plan ice': ['ice it', 'ice the foot', 'ice the toe', 'apply ice', 'use ice', 'ice regularly'],
      'plan rest-and-cold rest': ['rest the foot', 'rest it', 'rest the toe', 'needs to rest'],
    },
    value: COURSE,
  },
  restriction: {
    finding: {
      'plan restriction running': leaving('running'),
      'plan restriction jumping': leaving('jumping', 'hopping and jumping'),
      'plan restriction football': leaving('football'),
      'plan restriction sport': leaving('sport', 'sports', 'sporting activity', 'sporting activities'),
      'plan restriction impact': leaving(
        ...['impact', 'high impact', 'impact activity', 'impact activities', 'high impact activity', 'impact work'],
      ),
      'plan restriction barefoot': leaving('barefoot', 'barefoot walking', 'walking barefoot', 'going barefoot'),
      'plan restriction heels': leaving('heels', 'high heels', 'heeled shoes', 'wearing heels'),
      'plan restriction dancing': leaving('dancing', 'dance'),
    },
  },
  'sport-return': {
    finding: {
      'plan return-to running': [...resuming('running')],
      'plan return-to jogging': [...resuming('jogging')],
      'plan return-to walking': resuming('walking', 'normal walking'),
      'plan return-to sport': resuming('sport', 'sports', 'sporting activities'),
      'plan return-to dancing': [...resuming('dancing', 'dance')],
      'plan return-to football': [...resuming('football')],
      'plan return-to cycling': [...resuming('cycling')],
      'plan return-to swimming': [...resuming('swimming')],
      'plan return-to impact': resuming('impact', 'impact activity', 'impact activities', 'high impact'),
    },
  },
  'smoking-advice': {
    finding: {
      'plan smoking-advice': [
        ...['quit the cigarettes', 'pack in smoking', 'needs to quit smoking', 'quit the fags'],
        ...['smoking cessation referral', 'come off the cigarettes'],
      ],
    },
  },
  'weight-bearing': {
    finding: {
      'plan full-weight-bearing': orders(
        ['can', 'progress to', 'go to', 'allow', 'allowed', 'move to', 'build up to'],
        ...['full weight bear', 'fully weight bear', 'full weight bearing', 'full weightbearing', 'full weight'],
      ),
      'plan partial-weight-bearing': orders(
        ['can', 'progress to', 'allow', 'allowed'],
        ...['partial weight bear', 'partially weight bear', 'partial weight bearing', 'part weight bear'],
        ...['partial weightbearing'],
      ),
      'plan heel only': orders(
        ['can', 'allow', 'allowed'],
        ...['heel weight bear', 'weight bear through the heel', 'walk on the heel', 'weight bear on the heel'],
        ...['heel walk'],
      ),
      'plan weight-bearing-as-tolerated': orders(
        ['can', 'allow', 'allowed'],
        ...['weight bear as tolerated', 'weight bear as able', 'weight bear as pain allows'],
        ...['weight bear as comfort allows', 'bear weight as tolerated'],
      ),
      'full-weight-bearing': [
        ...['full weight', 'full weightbearing', 'fully weight bearing', 'fully weightbearing', 'full loading'],
        ...['full load', 'bearing full weight', 'full weight bear', 'fully weight bear'],
      ],
      'partial-weight-bearing': [
        ...['partial weight', 'part weight bearing', 'partially weight bearing', 'partial load', 'partial loading'],
        ...['partial weightbearing', 'part weight'],
      ],
      'heel only': ['heel touch', 'heel weight', 'heel bearing', 'heel loading', 'heel weightbearing'],
      'weight-bearing-as-tolerated': [...['weightbearing as tolerated'], ...['bear weight as tolerated']],
      'non-weight-bearing': ['nonweightbearing', 'strictly non weight bearing', 'strict non weight bearing'],
    },
  },
};
