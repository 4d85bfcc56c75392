// The food table: carbohydrate of everyday portions, one food a line. foods.ts reads it and says what each part means; sources.ts resolves the source codes.
// id | group | US name | UK name if another | portion | grams of the portion | total g | available g | total per 100 g | fibre per 100 g | source | other names | other total and note letters
export const TABLE = `
bread-white|bread|white bread||one slice|29|14.2|13.4|49.06|2.7|S18069|sandwich bread;slice of bread;white loaf
toast-white|bread|white toast||one large slice|27|14.7|14|54.4|2.5|S18070|toast;slice of toast;toasted bread
bread-whole-wheat|bread|whole wheat bread|wholemeal bread|one slice|32|13.7|11.7|42.71|6|S18075|wholewheat bread;wholegrain bread
bread-rye|bread|rye bread||one slice|32|15.5|13.6|48.3|5.8|S18060|rye;light rye
bread-french|bread|French bread|baguette|one small piece, about one ounce|28.35|16|15.3|56.44|2.4|S18029|French stick;sourdough bread;crusty bread
roll-dinner|bread|dinner roll|small bread roll|one small roll|28|14.6|14|52.04|2|S18342|bread roll;yeast roll
bun-hamburger|bread|hamburger bun|burger bun|one bun|44|22.1|21.1|50.15|2.1|S18350|hot dog bun;hot dog roll;sandwich bun;bap
bagel|bread|bagel||one medium bagel|105|53|50.7|50.5|2.2|S18001|plain bagel
english-muffin|bread|English muffin||one muffin, both halves|57|25.2|23.2|44.17|3.5|S18258|toasting muffin;breakfast muffin
croissant|bread|croissant||one medium|57|26.1|24.6|45.8|2.6|S18239|butter croissant
biscuit-us|bread|buttermilk biscuit|American savoury scone|one small, two and a half inches across|27|14|13.8|51.88|0.9|S18015|baking powder biscuit;southern biscuit
cornbread|bread|cornbread||one piece|65|28.3||43.5||S18024|corn bread;johnny cake
pita|flat bread|pita bread|pitta bread|one large round|60|33.4|32.1|55.7|2.2|S18041|pita;pocket bread
naan|flat bread|naan||one piece|90|45.4|43.4|50.43|2.2|S28307|naan bread;nan bread;nan
chapati|flat bread|chapati||one, six inches across|43|19.8|15.7|46.13|9.7|S28285|roti;phulka;rotli;chapatti;whole wheat roti
paratha|flat bread|paratha||one|79|35.8|28.2|45.35|9.6|S28286|plain paratha;parantha;porotta
tortilla-corn|flat bread|corn tortilla||one, six inches across|24|10.7|9.2|44.64|6.3|S18363|soft corn tortilla;tortillas
tortilla-flour-small|flat bread|small flour tortilla||one, six inches across|30|15.4|14.7|51.21|2.3|S18364|flour tortilla;wheat tortilla;fajita wrap
tortilla-flour-large|flat bread|large flour tortilla|large wrap|one, ten inches across|72|36.9|35.2|51.21|2.3|S18364|burrito wrap;sandwich wrap;wrap
pancake|flat bread|pancake|American pancake|one, four inches across|38|10.8||28.3||S18293|hotcake;griddle cake;pancakes
waffle|flat bread|waffle||one, four inches across|33|16.3|15.5|49.29|2.4|S18403|toaster waffle;frozen waffle;waffles
pan-dulce|bread|Mexican sweet bread||one piece|63|35.5|34.1|56.38|2.3|S18955|concha;sweet bun
stuffing|bread|bread stuffing||half a cup|100|21.7|18.8|21.7|2.9|S18082|stuffing;bread dressing
arepa|flat bread|arepa||one|98|36.4|33.8|37.14|2.6|S36415|corn cake;arepas
saltines|bread|saltine crackers|salted soda crackers|six crackers|18|13.3|12.8|74.05|2.8|S18228|saltines;soda crackers;crackers
crumpet|bread|crumpet||one, toasted|46|20.5|19.1|44.57|3.1|C11-989|crumpets|22.3
scone|bread|scone||one plain scone|48|25.5|24.4|53.07|2.2|C11-827|plain scone;cream tea scone;tea scone
bun-steamed-pork|hand food|steamed pork bun||one bun|100|43.5|40.3|43.5|3.2|J15035|char siu bao;bao;baozi;siopao;meat bun
oatmeal|cereal|oatmeal|porridge made with water|half a cup, cooked|117|14|12.1|12|1.7|S08121|porridge;oats;hot oatmeal;rolled oats
porridge-milk|cereal|oatmeal made with milk|porridge made with milk|one small bowl|160|21|19.5|13.1|0.9|C11-1108|milky porridge;oats and milk
grits|cereal|grits||half a cup, cooked|128.5|19|17.9|14.76|0.8|S08091|corn grits;hominy grits;corn porridge;cornmeal porridge
corn-flakes|cereal|corn flakes||three quarters of a cup|21|17.7|17|84.1|3.3|S08020|cornflakes;cold cereal
corn-flakes-sugared|cereal|sugar-coated corn flakes|frosted cornflakes|half a cup|20|16.6|16.2|82.85|2|C11-749|sugar coated cereal
bran-flakes|cereal|bran flakes||three quarters of a cup|30|23.8|18.3|79.3|18.2|S08029|bran cereal
wheat-biscuits|cereal|wheat biscuit cereal|wheat biscuits|two biscuits|40|30.4|26.5|76.04|9.7|C11-773|breakfast wheat biscuits
crisp-rice-cereal|cereal|crisp rice cereal|toasted rice cereal|three quarters of a cup|21|18.1|17.9|86.04|0.7|S08509|crispy rice cereal;rice cereal;rice crisps
granola|cereal|granola|crunchy oat cereal|one quarter cup|30.5|16.2|13.5|53.25|9|S08037|homemade granola
muesli|cereal|muesli||one quarter cup, dry|25|18.5|16.3|73.8|8.5|C11-781|Swiss muesli;muesli without sugar
rice-white|grain|white rice||half a cup, cooked|79|22.3|21.9|28.17|0.4|S20045|rice;boiled rice;steamed rice;basmati rice;jasmine rice
rice-brown|grain|brown rice||half a cup, cooked|101|23.2|21.4|22.96|1.8|S20037|whole grain rice
rice-sticky|grain|sticky rice|glutinous rice|half a cup, cooked|87|18.3|17.5|21.09|1|S20055|sweet rice;mochi rice
rice-congee|grain|rice porridge|congee|one cup|240|37.7|37.4|15.7|0.1|J01093|jook;okayu;rice gruel
rice-ball|grain|rice ball||one|100|39.4|39|39.4|0.4|J01111|onigiri;plain rice ball
rice-fried|grain|fried rice||half a cup|68.5|22.5|21.7|32.79|1.1|S36602|Chinese fried rice;egg fried rice
rice-peas-caribbean|dish|rice and peas, Caribbean style|rice and peas|half a cup|100|31.7|28.6|31.67|3.1|C15-859|rice and kidney beans;rice an peas;Jamaican rice|e
pasta|pasta|spaghetti|pasta|half a cup, cooked|62|19.1|18|30.86|1.8|S20121|noodles;macaroni;penne;cooked pasta
pasta-whole-wheat|pasta|whole wheat pasta|wholewheat pasta|half a cup, cooked|58.5|15.5|12.9|26.54|4.5|S20125|brown pasta;wholemeal spaghetti
noodles-egg|pasta|egg noodles||half a cup, cooked|80|20.1|19.2|25.16|1.2|S20110|lokshen;ribbon noodles
noodles-rice|pasta|rice noodles||half a cup, cooked|88|21.1|20.2|24.01|1|S20134|rice vermicelli;pho noodles;rice sticks;bihon
noodles-udon|pasta|udon noodles||one bowl of noodles, drained|250|54|52|21.6|0.8|J01039|udon;thick wheat noodles
noodles-instant|pasta|instant ramen noodles|instant noodles|one dry block|81|48.8|46.5|60.26|2.9|S06583|ramen;ramen noodles;packet noodles;cup noodles
couscous|grain|couscous||half a cup, cooked|78.5|18.2|17.1|23.22|1.4|S20029|cous cous
quinoa|grain|quinoa||half a cup, cooked|92.5|19.7|17.1|21.3|2.8|S20137|quinoa grain;kinwa
bulgur|grain|bulgur wheat||half a cup, cooked|91|16.9|12.8|18.58|4.5|S20013|bulgur;bulgar wheat;cracked wheat
potato-boiled|potato|boiled potato||half a cup|78|15.6|14.2|20.01|1.8|S11367|potato;potatoes;new potatoes
potato-baked|potato|baked potato|jacket potato|one medium, with skin|173|36.6|32.8|21.15|2.2|S11674|potato in its jacket
potato-mashed|potato|mashed potatoes|mash|half a cup|105|18.4|16.9|17.57|1.5|S11657|mashed potato;creamed potatoes
potato-roast|potato|roast potatoes||three small pieces|100|26.8|24.1|26.81|2.7|C13-534|roasties;roasted potatoes
fries-fast-food|potato|French fries|thin-cut fries|one small order|71|29.4|26.7|41.44|3.8|S21138|fries;shoestring fries
chips-uk|potato|thick-cut fries|chip shop chips|one small portion, about a dozen|100|33.4|30.2|33.41|3.2|C13-485|steak fries;fat chips|35.9
sweet-potato|potato|sweet potato||half a cup, baked|100|20.7|17.4|20.71|3.3|S11508|baked sweet potato;kumara
yam|potato|yam||half a cup, boiled|68|18.7|16|27.48|3.9|S11602|boiled yam;white yam;yellow yam
cassava|potato|boiled cassava|cassava|half a cup, boiled|80|25.9|24.4|32.43|1.9|C13-210|yuca;yucca root;manioc|e
taro|potato|taro|eddoes or dasheen|half a cup, cooked|66|22.8|19.5|34.6|5.1|S11519|taro root;dasheen;eddoe;cocoyam;arbi
plantain-boiled|potato|boiled plantain||half a cup of slices|77|24|22.2|31.15|2.3|S09278|plantain;cooked plantain;green banana boiled
plantain-fried-ripe|potato|fried ripe plantain||half a cup of slices|84.5|34.5|31.7|40.77|3.2|S09447|fried sweet plantain
plantain-fried-green|potato|fried green plantain||ten thin slices|53|26.1|24.2|49.17|3.5|S09446|twice-fried plantain
corn-kernels|vegetable|corn|sweetcorn|half a cup|74.5|15.6|13.8|20.98|2.4|S11168|corn kernels;corn niblets
corn-cob|vegetable|corn on the cob||one medium ear|103|21.6|19.1|20.98|2.4|S11168|ear of corn;corn cob
peas|vegetable|green peas|garden peas|half a cup|80|11.4|7|14.26|5.5|S11313|peas;frozen peas
squash-winter|vegetable|winter squash||one cup, cooked|205|18.1|12.4|8.85|2.8|S11644|acorn squash;hubbard squash;kabocha
mixed-vegetables|vegetable|mixed vegetables with corn and peas|mixed vegetables|half a cup|91|11.9|7.9|13.09|4.4|S11584|mixed veg;peas carrots and corn
yorkshire-pudding|bread|Yorkshire pudding||one small|30|7.4|7.1|24.7|1.1|C11-1146|popover
beans-black|legume|black beans||half a cup, cooked|86|20.4|12.9|23.71|8.7|S16015|turtle beans
beans-pinto|legume|pinto beans||half a cup, cooked|85.5|22.4|14.7|26.22|9|S16043|pintos
beans-kidney|legume|kidney beans||half a cup, cooked|88.5|20.2|13.6|22.8|7.4|S16033|red beans;rajma;red kidney beans
beans-baked|legume|baked beans|sweet baked beans, American style|half a cup|127|26.8|21.6|21.14|4.1|S16006|Boston baked beans;barbecue beans;pork and beans
beans-tomato-uk|legume|beans in tomato sauce, British style|baked beans|half a standard can|200|37.6|27.8|18.81|4.9|C13-532|tinned beans;tin of beans|40.7
beans-refried|legume|refried beans||half a cup|119|18.2|12.1|15.26|5.1|S16103|mashed beans
lentils|legume|lentils||half a cup, cooked|99|19.9|12.1|20.13|7.9|S16070|brown lentils;green lentils;cooked lentils
chickpeas|legume|chickpeas||half a cup, cooked|82|22.5|16.3|27.42|7.6|S16057|garbanzo beans;garbanzo;chick peas;channa
peas-black-eyed|legume|black-eyed peas|black-eye beans|half a cup, cooked|85.5|17.7|12.2|20.76|6.5|S16063|cowpeas;lobia
pigeon-peas|legume|pigeon peas|gungo peas|half a cup, cooked|84|19.5|13.9|23.25|6.7|S16102|congo peas;toor dal whole
hummus|legume|hummus|houmous|two tablespoons|30|4.3|2.5|14.29|6|S16158|chickpea dip;humus
dal|legume|lentil curry|dal|half a cup|120|13.4|11.8|11.13|1.3|C15-760|dhal;daal;masoor dal;tarka dal;tadka dal;red lentil curry|e
chana-masala|legume|chickpea curry||half a cup|120|21.1|15.9|17.62|4.4|C15-748|chana masala;chole;channa curry;chana|e
apple|fruit|apple||one small|149|20.6|17|13.81|2.4|S09003|raw apple;eating apple;apples
banana|fruit|banana||one medium|118|27|23.9|22.84|2.6|S09040|ripe banana;bananas
orange|fruit|orange||one|131|15.4|12.2|11.75|2.4|S09200|navel orange;oranges
tangerine|fruit|tangerine|satsuma|two small|152|20.3|17.5|13.34|1.8|S09218|mandarin orange;clementine;mandarin;easy peeler
grapes|fruit|grapes||seventeen small, three ounces|85|15.4|14.6|18.1|0.9|S09132|red grapes;green grapes;grape
grapefruit|fruit|grapefruit||half a large one|166|13.4|11.6|8.08|1.1|S09111|pink grapefruit
pear|fruit|pear||one small|148|22.5|18|15.23|3.1|S09252|pears;ripe pear
peach|fruit|peach||one medium|150|14.3|12.1|9.54|1.5|S09236|fresh peach;peaches
strawberries|fruit|strawberries||one and a quarter cups, whole|180|13.8|10.2|7.68|2|S09316|strawberry
blueberries|fruit|blueberries||three quarters of a cup|111|16.1|13.4|14.49|2.4|S09050|blueberry
mango|fruit|mango||half a cup of pieces|82.5|12.4|11|14.98|1.6|S09176|mangoes;ripe mango
papaya|fruit|papaya|pawpaw|one cup of cubes|145|15.7|13.2|10.82|1.7|S09226
pineapple|fruit|pineapple||three quarters of a cup|123.75|16.2|14.5|13.12|1.4|S09266|fresh pineapple
cantaloupe|fruit|cantaloupe|cantaloupe melon|one cup of cubes|160|13.1|11.6|8.16|0.9|S09181|orange melon;muskmelon
watermelon|fruit|watermelon||one and a quarter cups of cubes|190|14.3|13.6|7.55|0.4|S09326|water melon
prunes|fruit|prunes||three|28.5|18.2|16.2|63.88|7.1|S09291|dried plums
dates|fruit|dates||three small|21.3|16|14.3|75.03|8|S09087|dried dates;khajoor
applesauce|fruit|applesauce|stewed apple, no sugar|half a cup|122|13.7|12.4|11.27|1.1|S09401|apple sauce
fruit-cocktail|fruit|canned fruit cocktail|tinned fruit cocktail|half a cup, in juice|118.5|14.1|12.9|11.86|1|S09097|fruit cup;mixed fruit in juice
guava|fruit|guava||two small|110|15.8|9.8|14.32|5.4|S09139|guavas
avocado|fruit|avocado||half|100.5|8.6|1.8|8.53|6.7|S09037|half an avocado
milk-whole|milk|whole milk|full-fat milk|one cup|244|11.7|11.7|4.8|0|S01077|milk;regular milk;blue top milk
milk-2pct|milk|two percent milk|semi-skimmed milk|one cup|244|11.7|11.7|4.8|0|S01079|reduced fat milk;half fat milk;green top milk
milk-skim|milk|skim milk|skimmed milk|one cup|245|12.2|12.2|4.96|0|S01085|fat free milk;nonfat milk;red top milk
milk-condensed|milk|sweetened condensed milk|condensed milk|one tablespoon|19.1|10.4|10.4|54.4|0|S01095|sweet canned milk
yogurt-plain|milk|plain yogurt|natural yoghurt|one small pot, six ounces|170|12|12|7.04|0|S01117|yogurt;curd;dahi;plain yoghurt
yogurt-fruit|milk|fruit yogurt|fruit yoghurt|one small pot, six ounces|170|31.7|31.7|18.64|0|S01120|strawberry yogurt;sweetened yogurt
yogurt-greek|milk|plain Greek yogurt|Greek-style yoghurt|one small pot, six ounces|170|6.1|6.1|3.6|0|S01256|Greek yogurt;strained yogurt
soy-milk|milk|soy milk|soya milk|one cup|243|12|11.5|4.92|0.2|S16139|soybean milk
almond-milk|milk|almond milk, unsweetened|unsweetened almond milk|one cup|244|1.4|1.4|0.58|0|F11350020|almond drink
lassi-sweet|milk|sweet lassi||one glass, one cup|250|29.4|29.4|11.74|0|C12-373|lassi;yogurt drink|31.6
ice-cream|sweet|vanilla ice cream||half a cup|66|15.6|15.1|23.6|0.7|S19095|ice cream;scoop of ice cream
pudding-vanilla|sweet|vanilla pudding|set milk pudding|one small cup, four ounces|110|24.9|24.9|22.6|0|S19201|pudding cup;chocolate pudding
rice-pudding|sweet|rice pudding||half a cup|126.5|31.5|30.9|24.92|0.5|S36404|creamed rice;kheer
custard|sweet|custard sauce|custard|half a cup|125|19.1|19.1|15.3|0|C12-575|pouring custard;warm custard
flan|sweet|flan|crème caramel|half a cup|153|34.9|34.9|22.78|0|S19094|caramel custard;leche flan
gelatin|sweet|flavored gelatin|jelly made with water|half a cup|135|19.2|19.2|14.19|0|S19173|gelatin dessert;gelatine
apple-crumble|cake|apple crumble||half a cup|120|41.3|40.3|34.42|0.8|C11-1055|apple crisp;fruit crumble|44.9
cookies-choc-chip|cake|chocolate chip cookies|chocolate chip biscuits|two small|25.8|17|16.5|65.76|2|S18159|cookie;cookies;choc chip cookie
digestive-biscuits|cake|wheatmeal biscuits|digestive biscuits|two|30|19.3|18.1|64.19|3.8|C11-799|digestives;digestive cookie
cake-sponge|cake|sponge cake|plain sponge cake|one slice|38|23.2|23|61|0.5|S18133|sponge;Victoria sponge
cake-frosted|cake|yellow cake with frosting|iced sponge cake|one piece|64|35.4|34.5|55.36|1.5|S18140|birthday cake;frosted cake;cake
cake-chocolate|cake|chocolate cake||one piece|64|33.8|32.4|52.84|2.2|S18096|chocolate layer cake;devil's food cake
fruitcake|cake|fruitcake|fruit cake|one piece|43|26.5|24.9|61.6|3.7|S18110|Christmas cake;black cake;rum cake
pie-apple|cake|apple pie||one slice, one sixth of a pie|117|39.8|37.9|34|1.6|S18301|slice of apple pie
pie-pumpkin|cake|pumpkin pie||one slice, one eighth of a pie|155|40.9||26.4||S18327|sweet potato pie
doughnut-glazed|cake|glazed doughnut|glazed ring doughnut|one large|75|35.9|34.4|47.93|2.1|S18255|donut;doughnut;yeast donut
danish|cake|Danish pastry||one|71|33.9|32.6|47.8|1.9|S18246|danish;fruit danish;sweet pastry
cinnamon-roll|cake|cinnamon roll|cinnamon swirl|one|60|30.5|29.1|50.9|2.4|S18356|sticky bun;cinnamon bun
gulab-jamun|sweet|gulab jamun||one ball|40|19|18.8|47.5|0.5|C11-1081|gulab jaman;milk balls in syrup
chocolate-milk-bar|sweet|milk chocolate bar|milk chocolate|one bar, one and a half ounces|44|26.1|24.6|59.4|3.4|S19120|chocolate bar;candy bar;chocolate|n
jam|sweet|jam||one tablespoon|20|13.8|13.6|68.86|1.1|S19297|fruit preserves;strawberry jam;preserves
jelly-us|sweet|grape jelly|clear fruit jelly spread|one tablespoon|21|14.7|14.5|69.95|1|S19300|fruit jelly;jelly spread;redcurrant jelly
syrup-pancake|sweet|pancake syrup||one tablespoon|20|12.3|12.3|61.47|0|S19129|table syrup;breakfast syrup
ketchup|sweet|ketchup|tomato ketchup|one tablespoon|17|4.5|4.4|26.23|0.3|S11935|catsup;red sauce
prune-juice|drink|prune juice||one third of a cup|85.3|14.9|14|17.45|1|S09294|dried plum juice
cola-can|drink|can of regular cola|can of full-sugar cola|one can, twelve fluid ounces|370|39.1|39.1|10.58|0|S14148|can of soda;can of pop;soda can|l
cola-diet|drink|diet cola||one can, twelve fluid ounces|355|1|1|0.29|0|S14416|diet soda;sugar free cola;zero sugar cola|n
lemonade|drink|lemonade|still lemonade|one cup|247|25.7|25.7|10.42|0|S14293|homemade lemonade;cloudy lemonade
iced-tea-sweet|drink|sweetened iced tea||one cup|259|22.3|22|8.61|0.1|S14371|sweet tea;ice tea
coffee-black|drink|black coffee||one cup|237|0|0|0|0|S14209|coffee;plain coffee
tea-plain|drink|plain tea||one cup|237|0.7|0.7|0.3|0|S14355|tea;black tea
tea-chai|drink|sweet milky spiced tea|masala chai|one cup|240|21.6|21.3|8.98|0.1|F92306800|chai;chai tea;masala tea
hot-chocolate|drink|hot chocolate|hot chocolate made with milk|one cup|250|26.9|24.4|10.74|1|S01105|cocoa;hot cocoa;drinking chocolate
beer|drink|beer||one can, twelve fluid ounces|356|12.6|12.6|3.55|0|S14003|lager;can of beer
wine|drink|wine||one glass, five fluid ounces|148|4|4|2.72|0|S14084|glass of wine;red wine;white wine
horchata|drink|horchata||one cup|228|26.3|26.3|11.52|0|S14638|sweet rice drink
squash-blackcurrant|drink|blackcurrant drink|blackcurrant squash|one glass, diluted|250|17.4|17.4|6.96|0|C17-845|blackcurrant cordial;cordial
broccoli|vegetable|broccoli||half a cup, cooked|78|5.6|3|7.18|3.3|S11091|cooked broccoli
carrots-cooked|vegetable|cooked carrots||half a cup|78|6.4|4.1|8.22|3|S11125|carrots;boiled carrots
green-beans|vegetable|green beans||half a cup, cooked|62.5|4.9|2.9|7.88|3.2|S11053|string beans;French beans;runner beans
cabbage|vegetable|cabbage||half a cup, cooked|75|4.1|2.7|5.51|1.9|S11110|boiled cabbage
cauliflower|vegetable|cauliflower||half a cup, cooked|62|2.5|1.1|4.11|2.3|S11136|cauliflower florets;gobi
spinach|vegetable|spinach||half a cup, cooked|90|3.4|1.2|3.75|2.4|S11458|cooked spinach;saag;callaloo
collard-greens|vegetable|collard greens|spring greens|half a cup, cooked|95|5.4|1.6|5.65|4|S11162|collards;greens;kale
tomato|vegetable|tomato||one medium|123|4.8|3.3|3.89|1.2|S11529|fresh tomato;tomatoes
salad-green|vegetable|green salad||one cup of lettuce|72|2.1|1.3|2.97|1.2|S11252|lettuce;side salad
onions-cooked|vegetable|cooked onions||half a cup|105|10.7|9.2|10.15|1.4|S11283|onion;fried onions
beets|vegetable|beets|beetroot|half a cup, cooked|85|8.5|6.8|9.96|2|S11081|beet
okra|vegetable|okra||half a cup, cooked|80|3.6|1.6|4.51|2.5|S11279|ladies fingers;bhindi;okro
chayote|vegetable|chayote|cho cho|half a cup, cooked|80|4.1|1.8|5.09|2.8|S11150|christophene;mirliton
bitter-melon|vegetable|bitter melon|bitter gourd|half a cup, cooked|62|2.7|1.4|4.32|2|S11025|karela;ampalaya
bok-choy|vegetable|bok choy|pak choi|half a cup, cooked|85|1.5|0.7|1.78|1|S11117|Chinese cabbage;Chinese greens
coleslaw|vegetable|coleslaw||half a cup|95.5|14.2|12.4|14.89|1.9|S21127|slaw;cole slaw
pizza-cheese|hand food|cheese pizza||one slice of a fourteen inch pizza|107|35.7|33.2|33.33|2.3|S21299|pizza;slice of pizza;cheese and tomato pizza
mac-cheese|dish|macaroni and cheese|macaroni cheese|one cup|198|47.4|45|23.93|1.2|S22960|mac and cheese;mac n cheese
lasagna|dish|lasagna|lasagne|one center piece|255|39.2|34.8|15.36|1.7|S22977|meat lasagna
spaghetti-meatballs|dish|spaghetti with meatballs||one cup|246|26.8|20.1|10.89|2.7|S22912|spaghetti in tomato sauce;spag bol
chili-beans|soup|chili with beans|chilli con carne|one cup|242|31.7|23.7|13.1|3.3|S22904|chili;chilli;bowl of chili
beef-stew|soup|beef stew||one cup|196|15.4|13.6|7.85|0.9|S22905|stew;beef casserole
burrito-bean-cheese|hand food|bean and cheese burrito||one|185|57.8|50|31.23|4.2|S21061|bean burrito;burrito
hamburger|hand food|hamburger|beefburger|one small, with bun|97|28.7|26.9|29.57|1.8|S21108|burger;plain burger
cheeseburger|hand food|cheeseburger||one small, with bun|127|32.3|29.9|25.46|1.9|S21090|cheese burger
fish-sticks|hand food|fish sticks|fish fingers|three sticks|84|18.2|16.9|21.66|1.5|S15027|breaded fish;fish finger
fish-battered|hand food|battered fried fish|cod in batter|one piece from a fish shop|225|22.9|21.8|10.19|0.5|C16-427|fish from the chip shop;fried fish in batter
tamale-pork|hand food|pork tamale||one|142|22.4|19|15.75|2.4|S36412|tamale;tamales
pupusa-cheese|hand food|cheese pupusa||one|117|26.2|22.8|22.39|2.9|S36409|pupusa;pupusas
empanada-beef|hand food|beef empanada||one|89|27.8|26|31.19|2|S36403|empanada;meat turnover
arroz-con-pollo|dish|chicken and rice||one cup|141|28.2|26.6|20.03|1.2|S36401|chicken with rice;yellow rice with chicken
rice-black-beans|dish|rice and black beans||one cup|146|35.6|30.7|24.4|3.4|S36405
rice-pigeon-peas|dish|rice and pigeon peas|rice and gungo peas|one cup|115|35.4|33.8|30.75|1.4|S36407|pelau
egg-roll|hand food|egg roll|large spring roll|one|89|24.3|22|27.29|2.6|S36601|spring roll;lumpia
sweet-sour-chicken|dish|sweet and sour chicken||three pieces|55|13.1|12.6|23.86|1|S36621|sweet and sour|s
dumplings-pork|hand food|steamed pork dumplings||five pieces|100|19.3||19.3||J18012|shumai;siu mai;dim sum;potstickers;gyoza
biryani-chicken|dish|chicken biryani||one cup|180|29.6|27.5|16.46|1.2|C19-454|biryani;biriyani
curry-chicken|dish|chicken curry|chicken tikka masala|one cup, no rice|240|14.6|11.2|6.09|1.4|C19-296|butter chicken;curried chicken;chicken korma|17.3k
samosa-vegetable|hand food|vegetable samosa||one medium|60|18.5|16.4|30.91|3.5|C15-305|samosa;samosas;singara
pakora-onion|hand food|onion pakora|onion bhaji|two small|50|14.1|11.3|28.2|5.7|C15-828|pakora;bhajia;bhaji;pakoras|16.4
idli|dish|idli||two|80|22|20.4|27.55|2.09|IA014+B003|idly;steamed rice cake
dosa|dish|plain dosa||one|80|29.8|27.6|37.3|2.82|IA014+B003|dosai;masala dosa without filling;thosai
shepherds-pie|dish|shepherd's pie|cottage pie|one cup|240|29.1|26.2|12.11|1.2|C19-494|shepherds pie;mince and mash|38.1
cornish-pasty|hand food|meat and potato pasty|Cornish pasty|one|155|38.7|34.2|24.95|2.9|C19-466|pasty|40.7
sandwich-cheese|hand food|cheese sandwich|cheese and pickle sandwich|one whole sandwich|150|40.5|38.2|26.98|1.5|C11-963|cheese and bread;sandwich|44.5
soup-chicken-noodle|soup|chicken noodle soup||one cup|248|7.3|6.8|2.95|0.2|S06419|chicken soup
soup-tomato|soup|tomato soup||one cup, made with water|248|16.3|14.8|6.57|0.6|S06559|cream of tomato soup
soup-split-pea|soup|split pea soup|pea and ham soup|one cup|253|28|25.7|11.05|0.9|S06451|pea soup
soup-black-bean|soup|black bean soup||one cup|246|36.4|24.3|14.79|4.9|S36413|bean soup
popcorn|snack|popcorn||three cups, plain|24|18.7|15.2|77.78|14.5|S19034|air-popped popcorn
potato-chips|snack|potato chips|crisps|one ounce, about twenty-two|28|14.2|13|50.81|4.4|S19411|bag of chips;packet of crisps
tortilla-chips|snack|tortilla chips||one ounce|28.35|19.1|17.5|67.52|5.7|S19056|corn chips;nachos
pretzels|snack|pretzels||three quarters of an ounce|21.3|17|16.3|79.97|3.3|S19047|pretzel twists;pretzel sticks
rice-cakes|snack|rice cakes||two cakes|18|14.7|13.9|81.5|4.2|S19816|puffed rice cakes
peanuts|snack|peanuts||one ounce, about thirty-two|28.35|4.3|1.7|15.26|9.4|S16389|roasted peanuts;groundnuts
peanut-butter|snack|peanut butter||two tablespoons|32|6.3|4.3|19.56|6|S16398|smooth peanut butter
granola-bar|snack|granola bar|oat cereal bar|one bar, one ounce|28|18|16.5|64.4|5.3|S19015|cereal bar;crunchy oat bar
plantain-chips|snack|plantain chips||one ounce|28.35|18.1|17.1|63.84|3.5|S25027
egg|protein|egg||one large|50|0.6|0.6|1.12|0|S01129|boiled egg;fried egg;eggs;scrambled egg
chicken-roasted|protein|roast chicken||three ounces|85|0|0|0|0|S05064|chicken;grilled chicken;chicken breast|c
fish-plain|protein|baked fish||three ounces|85|0|0|0|0|S15237|salmon;grilled fish;fish|c
beef-plain|protein|beef patty, plain|beef burger patty, no bun|three ounces|85|0|0|0|0|S23574|beef;ground beef;steak;roast beef
cheese-cheddar|protein|Cheddar cheese||one ounce|28.35|0.4|0.4|1.28|0|S01009|cheese;hard cheese
glucose-tablets|fast sugar|glucose tablets, 4 grams each||four tablets|16.8|16|16|95.24|0|L4|glucose tablets;sugar tablets;dextrose tablets;glucose|l
glucose-tablets-small|fast sugar|glucose tablets, 3 grams each|dextrose tablets, 3 grams each|five tablets|15.5|15|15|96.77|0|L3|small glucose tablets|l
glucose-gel|fast sugar|glucose gel, 15 gram tube||one tube|33|15|15|45.45|0|L15|glucose gel;sugar gel|l
juice-orange|fast sugar|orange juice||half a cup, four fluid ounces|124.5|14.4|14|11.54|0.3|S09209|oj;fruit juice;juice
juice-apple|fast sugar|apple juice||half a cup, four fluid ounces|124|14|13.8|11.3|0.2|S09016|clear apple juice
juice-grape|fast sugar|grape juice||three and a half fluid ounces|110.6|16.3|16.1|14.77|0.2|S09130|purple grape juice
juice-pineapple|fast sugar|pineapple juice||half a cup, four fluid ounces|125|16.1|15.8|12.87|0.2|S09273
juice-cranberry|fast sugar|cranberry juice drink|cranberry juice|half a cup, four fluid ounces|126.5|17.1|17.1|13.52|0|S14242|cranberry juice cocktail
soda-cola|fast sugar|regular cola, small glass|full-sugar cola, small glass|five fluid ounces|153.5|16.2|16.2|10.58|0|S14148|regular soda;cola;pop
soda-lemon-lime|fast sugar|regular lemon-lime soda||five fluid ounces|154|16|16|10.42|0|S14144|lemon lime pop;clear soda;lemon lime
ginger-ale|fast sugar|regular ginger ale|full-sugar ginger ale|three quarters of a cup, six fluid ounces|183|16|16|8.77|0|S14136|ginger pop;ginger beer
lemonade-fizzy-uk|fast sugar|British fizzy lemonade|lemonade|one glass, nine fluid ounces|260|14.7|14.7|5.66|0|C17-179|fizzy lemonade|l
sugar-white|fast sugar|white sugar|granulated sugar|four level teaspoons|16.8|16.8|16.8|99.98|0|S19335|sugar;table sugar;caster sugar
sugar-packets|fast sugar|sugar packets|sugar sachets|five packets|14|14|14|99.98|0|S19335|packets of sugar;packet sugar|l
honey|fast sugar|honey||one tablespoon|21|17.3|17.3|82.4|0.2|S19296|clear honey
candy-hard|fast sugar|hard candy|boiled sweets|five small pieces|15|14.7|14.7|98|0|S19107|boiled sweet;hard sweets;butterscotch|f
jelly-beans|fast sugar|jelly beans||fifteen small|16.5|15.4|15.4|93.55|0.2|S19108|jellybeans
raisins|fast sugar|raisins||two tablespoons|18.2|14.4|13.7|79.18|3.7|S09298|sultanas;box of raisins;kishmish|w`;
