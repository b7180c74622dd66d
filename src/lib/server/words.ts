// 1024 short plain words for cards: ten bits each. Every one is spelt as it sounds or known to all; words that sound
// alike, words about bodies, rank or size, and unkind ones were left out. Cards in use were drawn from it: the words
// may change, for a card keeps only a hash of its own five.
export const words: readonly string[] = `
able acorn acre adapt admit after again agent ahead aim album alder alert alive alley almond aloud alpha always
amber ample amuse anchor ankle answer any apart apple april apron arena argue armour arrow artist aspen atlas
attic autumn avenue awake award axis axle badge baker balance balm bamboo banana banjo bank barber bark barley
barrel basil basket batch bath bead beak bean beard beaver beetle before behave bell below bend beside better
beyond bicycle bird biscuit blanket blend blink block bloom blot blouse boat bobbin bolt book boot borrow bottle
bounce bowl box brain branch brass bread break brew brick bridge bright bring broad bronze brook brother brown
bubble bucket buckle bulb bumper bunny burrow bush busy button cabbage cabin cactus cage cake calm camera canal
candle candy canvas canyon captain car caramel card care carol carpet carrot cart carve cash castle casual catch
cattle cave cedar celery centre chain chalk chamber chapel chapter charm chase chat cheese chef cherry chew
chicken child chimney chip choir chop cinema circle citrus civil claim clasp class clay clear clerk climb clock
close cloud clover clue coach coast cobble cocoa coffee coil cold collar colour come comet comic common compass
coral cork corner cosy cottage couch count cover crab cradle crane crayon crew cricket crisp crow crowd crumb
crust cuff curb curl curtain curve cushion cycle daily daisy damp dance dawn day decade deck delta den denim
desert desk dial diary dice dig dinner dish ditch dive doctor dog dollar dolphin dome door double dove down
dozen draw dream drift drill drink drop drum duck dune dusk duty eager early earn ease east echo editor eel
either elastic elbow elect elm empty end energy enjoy enough entry envelope equal essay even ever every exact
expert extra fable fabric face fade faith fall fame family fan farm father favour feather felt fence ferry fetch
fibre fiddle field figure film finch finger fish flag flame flare flask flavour fleece flint float flock floor
flute fly focus fog foil folk follow foot forest fork forth forum fox frame fresh friend frill frog front fruit
fudge fuel funnel furrow gable galaxy gallon game garage garlic garment gate gaze gear gentle gift ginger give
glad glaze glide globe glove glow goat gold golf goose gown grain grand graph grass gravel green greet grid
grill grin groove ground grove grow guard guide guitar habit half halo hand handle harbour hard harp hat hatch
hawk hazel head heart heat height helmet help here heron hide high hike hinge history hockey hold holly home
honest hood hook hope horizon horn hotel house humble hurry husk ice icicle igloo image inch ink inlet insect
inside invite iron island ivory ivy jacket january jar jaw jazz jelly jewel jigsaw jog join jolly journey joy
jug juggle july jumper june junior jury keep kennel kettle kind kiosk kitchen kite kitten knit knock lace ladder
ladle lamb lamp lantern large lark late laugh lava lavender lawn leader leaf learn leather ledge left lemon
lentil leopard letter level lever lift light lily lime limit linen lion listen little lively load loaf local
lock lodge logic long loop lorry loud loyal lucky lunch lute lyric magic magnet make mallet manner mantle maple
march margin mark market marsh match mattress meadow meal measure mellow melody member memory mend merit merry
meteor metre middle mild mile mill mimic mine minute mirror mix model modern moment monkey moon moor morning
mosaic moss motor mould mouse mouth move mud muffin museum music muslin mustard name nation native nature near
neat needle nest never nice nickel noble noon north note nothing novel number nurse nutmeg oak oat ocean odd
offer office olive omelette only onyx open orange orbit orchid order organ outer outside oven over owl paddle
page palace palm panda pansy pantry parade parcel park parsley part pass pasta pastel patch path pattern
pavement peach peanut pearl pelican pen penguin people pepper perhaps period photo piano picnic pigeon pillow
pin pine pink pioneer pipe pizza plan planet plant plate plaza please plenty plush pocket poet point polar
polite pollen pony poplar poppy porridge port pot potato pouch powder prairie present price print prize problem
proper proud public pudding puddle pullover pulse pupil puppet puppy purse puzzle quality quarry quarter quest
question quiet quill quilt quiz quote raccoon race radar radish raft raisin ramp range rapid rather reach ready
reason recipe record reflect region relay remind remote repair reply rescue result return rhythm ribbon ride
ridge rinse rise river robin robot rock roof room rosemary rotate round ruby ruffle ruler rumble rural rush
rustic safe saffron salad salmon salt same sample sandal satin saucer save scale scene school science scone
scoop scout scrap screen seal search seat secret seed select send series serve settle shake shape sharp shawl
sheep sheet shelf shelter shine shirt shoe shop shoulder show shrub shuffle sign silk silver single sister
sketch sky slate sleep sleeve slice slipper slope smoke smooth snack snow soap social sock sofa soil solar song
soon sound south space spark speak speech spell spice spin spiral sport spot spray spruce square squirrel stable
stage stand star state station stay steep stem stereo stick still stock stone stop story stove stream street
string strong studio style sugar summer supper surf surprise swallow sweater swift swing switch symbol table
tablet take talent talk tango tank target tartan taste teach teacup teapot tell temple tennis tent test text
thank theme thimble think thread three thumb thunder tidy tiger timber tin tiny title toast toffee together
token tone tool topic torch tortoise touch tour tower town toy tractor trade train travel tray tree trend trim
trio trip trombone trophy truck true trumpet trust truth tube tulip tuna tunnel turn turtle twice twin twist
ukulele uncle under uniform union unique until upon useful usual vacant value van vapour vase vast vendor
venture verse very video village vine violet violin visit voice volcano vote voyage wagon walk wall walnut
walrus warm wash watch wave weave weekend welcome west wheel when whisper whistle wild wind window wire wise
wish wool word world worth wren yard yarn yellow yes yoghurt zebra zest zinc zip
`.trim().split(/\s+/);
