"""What the voices say while the ear learns: our own words in every form they are spoken, and much else.

Phrases and foods are read from the app's sources, so a new answer is learned at the next training.
"""
import pathlib
import re

ROOT = pathlib.Path(__file__).resolve().parents[4]
ONES = "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split()
TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split()
NAMES = """anna arthur barbara carlos carol charles daniel david dorothy edith edward elena elizabeth ernest fatima florence frank george
grace hana harold helen henry irene jack james jane joan john joseph joyce kamal laura leo lin louis lucy maria marge margaret martin mary
mei mohammed nancy nora omar patricia paul peter priya ravi richard robert rosa rose ruth sam samuel sarah sofia susan thomas victor vera
walter william winnie yusuf rosalind""".split()
MORE = """yes;no;yeah;yep;nope;okay;yes please;no thank you;correct;wrong;that is right;that is wrong;yes it is;no it is not;not yet;help;
help me;again;say it again;repeat;repeat that;quiet;be quiet;back;go back;go on;carry on;continue;next;ready;done;all done;finish;stop;
stop here;cancel;emergency;wait;wait a moment;louder;softer;quieter;slower;faster;speak up;slow down;too fast;too loud;i am ready;
i am done;i am not sure;i do not know;i understand;something is wrong;breakfast;lunch;dinner;snack;supper;tea;i feel low;i feel ill;
left;right;left side;right side;stomach;belly;thigh;arm;leg;upper;lower;left thigh;right thigh;morning;evening;afternoon;night;
today;yesterday;tomorrow;a little;a lot;all;half;none;hardly any;more;less;high;low;it says high;it says low;milligrams;millimoles;
milligrams per deciliter;millimoles per liter;units;unit;grams;gram;minutes;minute;clicks;portion;portions;slice;slices;cup;cups;
half a cup;bowl;plate;spoon;tablespoon;teaspoon;one more;two slices;one slice;a small bowl;a glass of milk;a cup of tea;by hand;
change it;that is all;the same;usual;take off;pen;needle;window;button;zero;keypad;digits;one by one;never mind;what;pardon;sorry;lump;lumps;
no lumps;a lump is gone;the lump is gone;found a lump;i found lumps;groin;knee;shoulder;hip;outwards;inwards;found;gone;i am ill;ill;ketones;
background;background insulin;long acting;long acting insulin;practice;practice walk;reminder;later;remind me later;elsewhere;not now;
who is speaking;who speaks;change voice""".replace("\n", "").split(";")
SHORT_ANSWERS = """yes;no;yes;no;yes it is;no it is not;that is right;that is wrong;correct;help;help me;again;say it again;repeat;quiet;be quiet;back;go back;
something is wrong;stop here;ready;done;go on;next;all;half;hardly any;it is sore;lump;scar;mole;not sure;i am not sure;i understand;finish;all done;
breakfast;lunch;dinner;snack;use it;already washed;not yet;wait;change it;down;dry;wiped""".replace("\n", "").split(";")
BROAD_A = """half halves bath path glass glasses grass class classes pass past last fast fasting cast ask asked asks after afternoon answer
answers chance dance plant plants plaster laugh rather castle master basket branch example staff craft draft banana bananas mask task grant
command demand advantage calf behalf nasty vast contrast broadcast plants rather shan't can't tomato tomatoes draught""".split()


def clean(text: str) -> str:
    return " ".join(re.sub(r"[^a-z ]", " ", text.lower().replace("'", "")).split())


def literals(path: pathlib.Path) -> list[str]:
    return re.findall(r'"([^"\\\n]+)"', path.read_text())


def said_phrases() -> list[str]:
    found = set(clean(p) for p in MORE)
    for file in ("src/words/en/labels.ts", "src/app/spoken-offers.ts"):
        for text in literals(ROOT / file):
            phrase = clean(text)
            if 0 < len(phrase.split()) <= 8 and not any(c in text for c in "#/{"):
                found.add(phrase)
    return sorted(found - {""})


def app_sentences() -> list[str]:
    """What the app itself says and writes: plain sentences around our subject, as talk that is no answer."""
    found = set()
    for file in sorted((ROOT / "src/words").rglob("*.ts")):
        for text in literals(file):
            if 3 <= len(clean(text).split()) <= 10 and not re.search(r"[{}#/<>=_0-9]", text):
                found.add(clean(text))
    return sorted(found)


def foods() -> list[str]:
    found = set()
    for line in (ROOT / "src/rules/food/table.ts").read_text().splitlines():
        cells = line.split("|")
        if len(cells) < 11:
            continue
        for name in [cells[2], cells[3], cells[4], *cells[11].split(";")] if len(cells) > 11 else [cells[2], cells[3], cells[4]]:
            name = clean(name)
            if 0 < len(name.split()) <= 6:
                found.add(name)
    return sorted(found)


def small(n: int) -> str:
    if n < 20:
        return ONES[n]
    return TENS[n // 10 - 2] + ("" if n % 10 == 0 else " " + ONES[n % 10])


def digits(n: int) -> str:
    return " ".join(ONES[int(d)] for d in str(n))


def forms(n: int) -> list[str]:
    """Every way a whole number from 0 to 999 is said. No "oh"."""
    if n < 100:
        return [small(n)] + ([digits(n)] if n > 9 else [])
    h, r = divmod(n, 100)
    out = [digits(n), f"{ONES[h]} hundred" + (f" and {small(r)}" if r else "")]
    if r:
        out.append(f"{ONES[h]} hundred {small(r)}")
    if r >= 10:
        out.append(f"{ONES[h]} {small(r)}")
    return out


def whole(rng, n: int) -> str:
    return rng.choice(forms(n))


def teen_or_ten(rng) -> int:
    return rng.choice([rng.randrange(13, 20), 10 * rng.randrange(3, 10)])


def clock(rng) -> str:
    h, hour = rng.randrange(1, 13), ONES
    m = rng.choice([0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, rng.randrange(10, 60)])
    plain = f"{hour[h]} {small(m)}" if m >= 10 else f"{hour[h]} o clock" if m == 0 else f"{small(m)} past {hour[h]}"
    other = rng.choice([
        f"half past {hour[h]}", f"quarter past {hour[h]}", f"quarter to {hour[h]}", f"{rng.choice(['five', 'ten', 'twenty'])} to {hour[h]}",
        f"{rng.choice(['five', 'ten', 'twenty'])} past {hour[h]}", f"{hour[h]} thirty",
    ])
    return rng.choice([plain, plain, other]) + rng.choice(["", "", "", " in the morning", " in the evening", " in the afternoon", " at night"])


def decimal(rng) -> str:
    base = rng.choice([rng.randrange(0, 34), rng.randrange(2, 16)])
    return f"{small(base)} point {ONES[rng.randrange(10)]}"


def carrier(rng, text: str) -> str:
    if rng.random() < 0.75:
        return text
    return rng.choice(["it is {}", "it says {}", "about {}", "i have {}", "{} please", "that is {}", "um {}", "yes {}", "no {}", "{} i think", "my number is {}", "i took {}"]).format(text)


LIKE = ["four one", "one four", "four", "one", "one one", "four four", "five nine", "nine five", "five", "nine", "two", "ten", "eight", "eighty", "eighteen"]


def mistakable(rng) -> str:
    """What the ear mixed up most: four and one, five and nine, a teen and its ten, digits said in one breath."""
    pick = rng.random()
    if pick < 0.35:
        return rng.choice(LIKE) if rng.random() < 0.4 else " ".join(ONES[rng.choice([1, 1, 4, 4, 5, 9, rng.randrange(10)])] for _ in range(rng.randrange(1, 4)))
    if pick < 0.6:
        n = teen_or_ten(rng)
        return small(n) + rng.choice(["", "", "", " units", " grams", " and a half"])
    if pick < 0.8:
        return whole(rng, 100 * rng.choice([1, 1, 4, rng.randrange(1, 6)]) + rng.choice([teen_or_ten(rng), rng.choice([1, 4, 14, 40, 41, 11])]))
    return digits(rng.randrange(10, 600))


class Speaker:
    """Chooses what is said next. One random source, so that a seed gives the same text."""

    def __init__(self, rng, filler: list[str]):
        self.rng, self.filler = rng, filler
        self.said, self.food, self.sentences = said_phrases(), foods(), app_sentences()
        own = " ".join(self.said + self.food).split()
        self.own = sorted(set(own + ONES + TENS + ["hundred", "point", "half", "and"]))
        self.number_words = ONES + TENS + ["hundred", "point", "half", "and", "a"]

    def say(self) -> str:
        """Numbers a little over half; the app's own phrases a third; the rest is talk that is no answer."""
        r = self.rng
        again = r.random()
        if again < 0.12:
            return mistakable(r)
        if again < 0.17:
            return r.choice(SHORT_ANSWERS)
        kind = r.random()
        if kind < 0.14:
            return carrier(r, whole(r, r.randrange(20, 601)) + r.choice(["", "", "", "", " milligrams"]))
        if kind < 0.19:
            return carrier(r, small(r.randrange(100)))
        if kind < 0.29:
            n = teen_or_ten(r)
            pick = r.random()
            if pick < 0.4:
                return small(n)
            if pick < 0.6:
                return whole(r, 100 * r.randrange(1, 6) + n)
            if pick < 0.7:
                return small(n) + r.choice([" units", " grams", " minutes", " point five", " and a half"])
            if pick < 0.85:
                return " ".join(small(teen_or_ten(r)) for _ in range(r.randrange(2, 4)))
            return carrier(r, small(n) if n < 20 else small(n + r.randrange(10)))
        if kind < 0.34:
            return carrier(r, decimal(r) + r.choice(["", "", "", " millimoles"]))
        if kind < 0.38:
            n = r.choice([r.randrange(1, 61), r.randrange(1, 20)])
            return carrier(r, small(n) + r.choice(["", " and a half", " and a half"]) + (" unit" if n == 1 else " units"))
        if kind < 0.405:
            return carrier(r, whole(r, r.randrange(1, 251)) + " grams")
        if kind < 0.425:
            return clock(r)
        if kind < 0.46:
            return " ".join(ONES[r.randrange(10)] for _ in range(r.randrange(1, 5)))
        if kind < 0.70:
            return r.choice(self.said) if r.random() < 0.9 else r.choice(self.said) + " " + r.choice(self.said)
        if kind < 0.79:
            return r.choice(SHORT_ANSWERS)
        if kind < 0.82:
            return r.choice(["", "", "one ", "two ", "a ", "half a "]) + r.choice(self.food)
        if kind < 0.83:
            return r.choice(["", "carry on ", "i am ", "this is "]) + r.choice(NAMES)
        if kind < 0.86:
            return r.choice(self.sentences)
        if kind < 0.90:
            return " ".join(r.choice(self.own) for _ in range(r.randrange(1, 5)))
        if kind < 0.92:
            return " ".join(r.choice(self.number_words) for _ in range(r.randrange(1, 6)))
        words = [r.choice(self.filler) if r.random() < 0.85 else r.choice(self.own) for _ in range(r.choice([1, 1, 2, 3, 4, 5, 6, 7]))]
        return " ".join(words)

    def text(self) -> str:
        """With a breath now and then, told, asked or called out."""
        words = self.say().split()
        p = self.rng.choice([0, 0, 0, 0, 0.15, 0.5])
        end = self.rng.choice(["", "", "", ".", ".", "?", "!"])
        return " ".join(w + ("," if i + 1 < len(words) and self.rng.random() < p else "") for i, w in enumerate(words)) + end
