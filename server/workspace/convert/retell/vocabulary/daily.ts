import type { Said } from './index.ts';
import { said } from './said.ts';

/** Games and exercise that the language has no word for: each is kept as told. */
const GAMES = {
  ...Object.fromEntries(
    said(
      'tennis, golf, squash, badminton, netball, hockey, rugby, cricket, basketball, volleyball, handball, padel, pickleball, bowls',
    ).map((game) => [
      `activity "${game}"`,
      [`plays ${game}`, `${game} player`, `keen ${game} player`, `enjoys ${game}`],
    ]),
  ),
  'activity "gym"': said('goes to the gym, attends the gym, gym goer, gym member, gym user, uses the gym'),
  'activity "yoga"': said('does yoga, practises yoga, practices yoga, yoga teacher, goes to yoga'),
  'activity "pilates"': said('does pilates, goes to pilates, pilates teacher'),
  'activity "climbing"': said('rock climber, climbs indoors, rock climbing'),
  'activity "skiing"': said('skis, skier, goes skiing, keen skier'),
  'activity "horse riding"': said('horse rider, rides horses, goes horse riding'),
  'activity "martial arts"': said('does karate, does judo, does martial arts'),
};

/** Work that the language has no word for, beside `works as`. */
const JOBS = Object.fromEntries(
  said(`mail carrier, mailman, accountant, lawyer, solicitor, engineer, secretary, cashier, bus driver, lorry driver, truck driver, taxi driver, delivery driver,
    nurse, staff nurse, midwife, carer, care assistant, cook, waiter, barista, bartender, barman, barmaid, student, lecturer, paramedic,
    firefighter, security guard, security officer, bank clerk, librarian, painter, decorator, joiner, welder, butcher, shop assistant,
    sales assistant, salesman, saleswoman, flight attendant, cabin crew, pharmacist, dentist, veterinary nurse, vet, teaching assistant,
    nursery nurse, childminder, priest, bricklayer, scaffolder, landscaper, dance teacher, fitness instructor, personal trainer, coach,
    software engineer, software developer, programmer, postwoman, postal worker, housekeeper, caretaker, janitor, machinist, tailor`).map(
    (job) => [`"${job}"`, [job]],
  ),
);

/** How much can be done before the breath or the legs give in, as told. */
const TOLERANCE = Object.fromEntries(
  said('good, poor, excellent, limited, fair').map((how) => [
    `activity "exercise tolerance ${how}"`,
    [`exercise tolerance ${how}`, `${how} exercise tolerance`],
  ]),
);

/** How often, as told. */
const OFTEN = Object.fromEntries(
  said(`once a week, twice a week, twice weekly, 2 times a week, 3 times a week, 4 times a week, 5 times a week, every day, every week,
    every weekend, at weekends, on weekends, weekends, most days, daily, regularly, recreationally, competitively, socially, for fun,
    semi professionally, professionally, at club level, several times a week, most weekends`).map((often) => [
    `"${often}"`,
    [often],
  ]),
);

/** Activity, work, home, wishes and the past of the patient. */
export const DAILY: Said = {
  activity: {
    finding: {
      'activity running':
        said(`keen runner, avid runner, recreational runner, regular runner, enjoys running, likes running, goes running,
        loves running, passionate runner`),
      'activity running "half marathons"': said('half marathon runner, runs half marathons'),
      'activity running "marathons"': said('marathon runner, runs marathons'),
      'activity jogging': said('jogger, jogs, goes jogging, keen jogger'),
      'activity walking': said('keen walker, avid walker, enjoys walking, likes walking, loves walking, rambler'),
      'activity walking "the dog"': said('walks the dog, walks her dog, walks his dog, dog walker, walks dogs'),
      'activity hiking':
        said(`hiker, hikes, keen hiker, avid hiker, hill walker, goes hiking, fell walker, trekker, bushwalker,
        enjoys hiking, likes hiking`),
      'activity dancing': said('keen dancer, goes dancing, enjoys dancing, likes dancing, dances'),
      'activity dancing "ballroom"': said('ballroom dancer, ballroom dances, does ballroom'),
      'activity ballet': said('ballet dancer, ballerina, does ballet, dances ballet'),
      'activity football': said('plays football, plays soccer, soccer player, football player, keen footballer'),
      'activity cycling': said(
        'keen cyclist, avid cyclist, goes cycling, enjoys cycling, likes cycling, rides a bike, rides a bicycle',
      ),
      'activity swimming': said('swims, keen swimmer, goes swimming, enjoys swimming, likes swimming, regular swimmer'),
      'activity sport': said('sporty, sportsman, sportswoman, plays sport, plays sports, athlete, athletic'),
      'activity sedentary': said(
        'sedentary lifestyle, leads a sedentary life, takes little exercise, does little exercise, inactive, physically inactive',
      ),
      ...GAMES,
      ...TOLERANCE,
    },
    value: {
      running: said('runs regularly'),
      hiking: said('hill walking, fell walking, trekking, hikes'),
      cycling: said('biking, bike riding'),
      football: said('soccer'),
      ...Object.fromEntries(
        said('tennis, golf, squash, badminton, netball, hockey, rugby, cricket, yoga, pilates, gym, skiing').map(
          (game) => [`"${game}"`, [game]],
        ),
      ),
      ...OFTEN,
    },
  },
  work: {
    finding: {
      work: said(
        'working as, employed as, profession, line of work, works full time as, works part time as, earns her living as, trade',
      ),
      'work desk': said(
        'desk based, desk bound, desk worker, works at a desk, sits at a desk, sits at a computer, computer job',
      ),
      'work sitting': said(
        'sits all day, sits most of the day, sitting job, sedentary job, sedentary work, seated job, seated work, sedentary occupation',
      ),
      'work office': said('office based, works in an office, clerical worker, clerical job, clerical work, admin job'),
      'work on feet': said('stands at work, standing job, stands a lot at work, works standing, standing occupation'),
      'work on feet all day': said('feet all day'),
      'work standing all day': said('stands all day, stood all day, stands all day at work'),
      'work heavy': said(
        'heavy job, heavy work, physical job, physical work, physically demanding job, heavy physical job',
      ),
      'work manual': said(
        'manual worker, manual labourer, manual laborer, labourer, laborer, manual job, manual labour, manual labor',
      ),
      'work heavy manual': said(
        'heavy manual labour, heavy manual labor, heavy manual worker, heavy manual work, heavy manual job',
      ),
      'work "homemaker"': said('homemaker, home maker, housewife, househusband'),
      'work retired': said('pensioner, retiree, took retirement'),
      'work off work': said('signed off work, away from work, off from work'),
      'work sick leave': said('off sick, signed off sick, sick listed, medical leave, long term sick'),
      'work not working': said('unemployed, jobless, between jobs'),
      'work back at work': said(
        'returned to work, resumed work, back to her job, back to his job, returned to her job, returned to his job',
      ),
    },
    value: {
      sitting: said('sedentary, seated, sit down, sitting down, sits, chair based'),
      desk: said('desk based, desk bound, at a desk, desk work, computer work, screen work'),
      office: said('office based, in an office, clerical, admin, office work'),
      'on feet': said(
        'on her feet, on his feet, standing, stands, stands a lot, mostly standing, mainly standing, on their feet',
      ),
      'on feet all day': said(
        'on my feet all day, on their feet all day, on her feet all shift, on his feet all shift, on her feet the whole day',
      ),
      'standing all day': said('stands all day, stood all day'),
      heavy: said('heavy lifting, physical, physically demanding'),
      manual: said('manual labour, manual labor, labouring, laboring'),
      retired: said('pensioner'),
      ...JOBS,
      ...Object.fromEntries(
        said('part time, full time, night shifts, shifts, night shift, shift work, from home').map((how) => [
          `"${how}"`,
          [how],
        ]),
      ),
    },
  },
  home: {
    finding: {
      'home alone': said(
        'lives by herself, lives by himself, lives on her own, lives on his own, lives on their own, lives solo',
      ),
    },
    value: { alone: said('by herself, by himself, on her own, on his own') },
  },
  driving: {
    finding: {
      'drives an automatic': said('drives an automatic car, drives auto, automatic car'),
      'drives a manual': said(
        'drives a manual car, drives a manual, drives stick, drives a stick shift, drives a geared car, manual car',
      ),
      'does not drive': said('non driver'),
      drives: said('drives a car, drives to work, drives herself, drives himself'),
    },
  },
  goal: {
    value: Object.fromEntries(
      said(`get back to running, return to running, run again, get back to sport, return to sport, get back to hiking, return to hiking,
        get back to dancing, dance again, return to dancing, get back to walking, walk the dog, walk the dog again, walk further,
        be pain free, wear normal shoes, wear ordinary shoes, wear heels, wear shoes, get back to work, return to work,
        get back to golf, get back to tennis, get back to the gym, play tennis, play golf, play football, get back to football,
        return to football, get back to cycling, get back to swimming, run a marathon, pain relief, ski again`).flatMap(
        (wish) => [[`"${wish}"`, [wish, `to ${wish}`]]],
      ),
    ),
  },
  'family-history': {
    value: {
      bunions: said('bunion deformity'),
      diabetes: said('sugar diabetes'),
      clot: said('blood clots, blood clot'),
    },
  },
  'weight-loss': {
    finding: {
      'weight-loss': said(
        'unintentional weight loss, unintended weight loss, unplanned weight loss, weight has dropped, loss of weight',
      ),
    },
  },
  malaise: {
    finding: {
      malaise: said(
        'feeling unwell, feels ill, feeling ill, systemically ill, constitutionally unwell, unwell in herself, unwell in himself, feels poorly, feeling poorly, generally ill, systematically unwell',
      ),
    },
  },
  falls: {
    finding: {
      falls: said(
        'frequent falls, frequent faller, recurrent faller, prone to falls, falls prone, multiple falls, keeps falling, repeated falls',
      ),
    },
  },
};
