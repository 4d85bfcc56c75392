// Words whose sounds were written or checked by hand, from memory: they go before the dictionary's (words-found.ts).
// One word a line: word, then its pronunciations in ARPAbet without stress, the commonest first, "/" between them.

/** The number words: every digit of a dose hangs on these. The forms without R, and "hahf", are British. */
const NUMBERS = `
zero Z IH R OW / Z IY R OW
one W AH N
two T UW
three TH R IY
four F AO R / F AO
five F AY V
six S IH K S
seven S EH V AH N
eight EY T
nine N AY N
ten T EH N
eleven IH L EH V AH N / IY L EH V AH N / AH L EH V AH N
twelve T W EH L V
thirteen TH ER T IY N
fourteen F AO R T IY N / F AO T IY N
fifteen F IH F T IY N
sixteen S IH K S T IY N
seventeen S EH V AH N T IY N
eighteen EY T IY N
nineteen N AY N T IY N
twenty T W EH N T IY / T W EH N IY
thirty TH ER T IY
forty F AO R T IY / F AO T IY
fifty F IH F T IY
sixty S IH K S T IY
seventy S EH V AH N T IY
eighty EY T IY
ninety N AY N T IY
hundred HH AH N D R AH D / HH AH N D R IH D / HH AH N D ER D
thousand TH AW Z AH N D
point P OY N T
half HH AE F / HH AA F
and AE N D / AH N D / AH N
a AH / EY
unit Y UW N AH T / Y UW N IH T
units Y UW N AH T S / Y UW N IH T S
gram G R AE M
grams G R AE M Z
minute M IH N AH T / M IH N IH T
minutes M IH N AH T S / M IH N IH T S
click K L IH K
clicks K L IH K S
`;

/** Answers, and the clock's words that a dictionary gives only as letters or not at all. */
const COMMANDS = `
yes Y EH S
no N OW
i'm AY M
clumped K L AH M P T
see S IY
ran R AE N
forgot F ER G AA T / F AH G AA T
stands S T AE N D Z
glargine G L AA R JH IY N / G L AA JH IY N
detemir D EH T AH M IH R / D EH T AH M IY R
degludec D EH G L UW D EH K
danger D EY N JH ER
gets G EH T S
worse W ER S
ketone K IY T OW N
strips S T R IH P S
trace T R EY S
moderate M AA D ER AH T / M AA D ER IH T
plus P L AH S
tubes T UW B Z / T Y UW B Z
practice P R AE K T AH S / P R AE K T IH S
wooden W UH D AH N
bead B IY D
beads B IY D Z
tape T EY P
thread TH R EH D
wool W UH L
lumps L AH M P S
groin G R OY N
knee N IY
shoulder SH OW L D ER
hip HH IH P
outwards AW T W ER D Z
inwards IH N W ER D Z
found F AW N D
gone G AO N / G AA N
ketones K IY T OW N Z
background B AE K G R AW N D
reminder R IH M AY N D ER / R IY M AY N D ER
remind R IH M AY N D / R IY M AY N D
elsewhere EH L S W EH R / EH L S W EH
glucagon G L UW K AH G AA N
injected IH N JH EH K T IH D / IH N JH EH K T AH D
awake AH W EY K
sound S AW N D
talk T AO K
always AO L W EY Z
checks CH EH K S
front F R AH N T
keys K IY Z
touch T AH CH
walk W AO K
feels F IY L Z
standing S T AE N D IH NG
millimoles M IH L IY M OW L Z / M IH L AH M OW L Z
milligrams M IH L AH G R AE M Z / M IH L IH G R AE M Z
dl D IY EH L
mmol M IH L IY M OW L / M IH L AH M OW L
mg M IH L AH G R AE M Z / M IH L IH G R AE M Z
clinician's K L IH N IH SH AH N Z
tablebell T EY B AH L B EH L
o'clock AH K L AA K
am EY EH M / AE M
pm P IY EH M
quarter K W AO R T ER / K AO R T ER / K W AO T ER
past P AE S T / P AA S T
can't K AE N T / K AA N T
ask AE S K / AA S K
glass G L AE S / G L AA S
`;

/** Names of foods that the dictionary lacks, as they are said in US or UK kitchens, and the second Englishes of some that it has. */
const FOODS = `
ampalaya AA M P AA L AY AH
arbi AA R B IY
arepa AH R EY P AH
arepas AH R EY P AH Z
banana B AH N AE N AH / B AH N AA N AH
bananas B AH N AE N AH Z / B AH N AA N AH Z
baozi B AW Z IY
bap B AE P
basil B EY Z AH L / B AE Z AH L
basmati B AA Z M AA T IY / B AE Z M AE T IY
beefburger B IY F B ER G ER
beetroot B IY T R UW T
bhaji B AA JH IY
bhajia B AA JH IY AH
bhindi B IH N D IY
bihon B IY HH OW N
biriyani B IH R IY AA N IY / B IH R Y AA N IY
biryani B IH R Y AA N IY / B IH R IY AA N IY
blackcurrant B L AE K K ER AH N T / B L AE K K AH R AH N T
bulgar B AH L G ER
bulgur B AH L G ER
callaloo K AE L AH L UW
cassava K AH S AA V AH
channa CH AH N AH / CH AA N AH
chapati CH AH P AA T IY
chapatti CH AH P AA T IY / CH AH P AE T IY
chayote CH AY OW T IY / CH AY OW T EY
chickpea CH IH K P IY
chickpeas CH IH K P IY Z
chilli CH IH L IY
choc CH AA K
chole CH OW L EY
christophene K R IH S T AH F IY N
cocoyam K OW K OW Y AE M
congee K AA N JH IY
cornflakes K AO R N F L EY K S / K AO N F L EY K S
cous K UW S
couscous K UW S K UW S
cowpeas K AW P IY Z
crumpet K R AH M P AH T / K R AH M P IH T
crumpets K R AH M P AH T S / K R AH M P IH T S
daal D AA L
dahi D AH HH IY / D AA HH IY
dasheen D AE SH IY N
dhal D AA L
digestives D AY JH EH S T IH V Z
dosa D OW S AH / D OW Z AH
dosai D OW S AY
eddoe EH D OW
eddoes EH D OW Z
empanada EH M P AH N AA D AH
fizzy F IH Z IY
florets F L AO R EH T S / F L AO R AH T S
garbanzo G AA R B AA N Z OW
glutinous G L UW T AH N AH S / G L UW T IH N AH S
granulated G R AE N Y AH L EY T IH D / G R AE N Y UW L EY T AH D
griddle G R IH D AH L
gulab G UH L AA B / G UW L AA B
gungo G UH NG G UW / G AH NG G OW
gyoza G Y OW Z AH / G IY OW Z AH
horchata AO R CH AA T AH / HH AO R CH AA T AH
houmous HH UH M AH S / HH UW M UH S
idli IH D L IY
jaman JH AA M AH N
jamun JH AA M UH N / JH AA M AH N
jellybeans JH EH L IY B IY N Z
jook JH UH K / JH UW K
kabocha K AH B OW CH AH
karela K AH R EH L AH / K AH R EY L AH
khajoor K AH JH UH R
kheer K IH R / K IY R
kinwa K IY N W AA
kishmish K IH SH M IH SH
korma K AO R M AH
kumara K UW M AH R AH
lasagne L AH Z AA N Y AH / L AH Z AE N Y AH
lassi L AH S IY / L AE S IY
leche L EY CH EY
lobia L OW B IY AH
lokshen L AA K SH AH N
lumpia L UW M P IY AH / L UH M P Y AH
masala M AH S AA L AH
masoor M AH S UH R / M AH S AO R
mirliton M ER L IH T AA N / M EH L IH T AA N
mochi M OW CH IY
muesli M Y UW Z L IY
niblets N IH B L AH T S
okayu OW K AA Y UW
okro AA K R OW / OW K R OW
onigiri OW N IY G IH R IY
pakora P AH K AO R AH
pakoras P AH K AO R AH Z
parantha P AH R AA N T AH
paratha P AH R AA T AH
pasta P AA S T AH / P AE S T AH
pasty P AE S T IY
pawpaw P AO P AO
pelau P EH L AW / P AH L AW
penne P EH N EY / P EH N IY
phulka F UH L K AH
pintos P IH N T OW Z
pitta P IH T AH
popover P AA P OW V ER
porotta P AH R OW T AH
potstickers P AA T S T IH K ER Z
pupusa P UW P UW S AH
pupusas P UW P UW S AH Z
rajma R AA JH M AH
ramen R AA M AH N
redcurrant R EH D K ER AH N T / R EH D K AH R AH N T
refried R IY F R AY D
roasties R OW S T IY Z
rotli R OW T L IY
saag S AA G
sachets S AE SH EY Z
saltine S AO L T IY N
saltines S AO L T IY N Z
samosas S AH M OW S AH Z
savoury S EY V ER IY
scone S K OW N / S K AA N
scones S K OW N Z / S K AA N Z
shumai SH UW M AY
singara S IH NG G AA R AH
siopao SH OW P AW
sourdough S AW ER D OW / S AW R D OW
spag S P AE G
sultanas S AH L T AE N AH Z / S AH L T AA N AH Z
sweetcorn S W IY T K AO R N / S W IY T K AO N
tadka T AH D K AH
tamale T AH M AA L IY / T AH M AA L EY
tarka T AA R K AH
thosai T OW S AY
tikka T IY K AH / T IH K AH
tinned T IH N D
tomato T AH M EY T OW / T AH M AA T OW
tomatoes T AH M EY T OW Z / T AH M AA T OW Z
toor T UH R / T AO R
udon UW D AA N
unsweetened AH N S W IY T AH N D
veg V EH JH
vermicelli V ER M AH CH EH L IY / V ER M IH S EH L IY
wheatmeal W IY T M IY L
wholegrain HH OW L G R EY N
wholemeal HH OW L M IY L
wholewheat HH OW L W IY T
yoghurt Y OW G ER T / Y AA G ER T
yogurt Y OW G ER T / Y AA G ER T
yuca Y UW K AH / Y AH K AH
`;

/** The names of the letters, for words that stand as letters. "z" in both Englishes. */
const LETTERS = `
b B IY
c S IY
d D IY
e IY
f EH F
g JH IY
h EY CH
i AY
j JH EY
k K EY
l EH L
m EH M
n EH N
o OW
p P IY
q K Y UW
r AA R / AA
s EH S
t T IY
u Y UW
v V IY
w D AH B AH L Y UW
x EH K S
y W AY
z Z IY / Z EH D
`;

export const BY_HAND: readonly string[] = [NUMBERS, COMMANDS, FOODS, LETTERS].flatMap((part) => part.trim().split("\n"));
