#include "takeoff/takeoff.h"

/* Hours per cubic metre; by enum subsoil: loam, clay, sand. */
static const double DIGGING[] = { 2.20, 3.30, 1.20 }, LOADING[] = { 1.30, 1.90, 1.00 };
static const double BARROWING = 1.25, BASE_COURSE = 1.00;

enum { GOODS_MOST = 6 };

/* What the hours depend on; of base, its compacted volume. */
enum labour {
	LABOUR_UNKNOWN, LABOUR_SOD, LABOUR_DIGGING, LABOUR_LOADING, LABOUR_BASE, LABOUR_BARROWING
};

/* A step that may come up: for items to order, hours of work, or another reason. */
struct plan_row {
	const char *title, *doing, *tools, *caution;
	enum { WITH_ITEMS, ALWAYS, WITH_BASE, WITH_CUTS } comes;
	enum good goods[GOODS_MOST]; /* that it takes */
	int good_count;
	enum labour labour;
	const char *rate;
};

static double base_volume(const struct takeoff *takeoff)
{
	return takeoff->stones.totals[STONE_KIND_BASE].compacted;
}

/* volume: m3 of loose goods that the step takes. */
static double hours(const struct takeoff *takeoff, enum labour labour, double volume)
{
	int64_t subsoil = block_number(takeoff->allow, ALLOW_SUBSOIL);
	const struct earth *bank = &takeoff->earthwork.bank;

	switch (labour) {
	case LABOUR_UNKNOWN:
		break;
	case LABOUR_SOD:
		return DIGGING[subsoil] * bank->sod;
	case LABOUR_DIGGING:
		return DIGGING[subsoil] * (bank->topsoil + bank->subsoil);
	case LABOUR_LOADING:
		return LOADING[subsoil] * volume;
	case LABOUR_BASE:
		return BASE_COURSE * base_volume(takeoff);
	case LABOUR_BARROWING:
		return BARROWING * volume;
	}
	return 0;
}

static bool has_cuts(const struct cuttings *cuttings)
{
	for (int i = 0; i < cuttings->count; i++)
		if (cuttings->list[i].cut_blocks > 0)
			return true;
	return false;
}

#define TAKES(...) .goods = { __VA_ARGS__ }, \
	.good_count = sizeof((enum good[]){ __VA_ARGS__ }) / sizeof(enum good)

static const struct plan_row rows[] = {
	{ .title = "Have services marked", .comes = ALWAYS,
		.doing = "Ask the local service to mark public lines and wait the days it asks; "
			"have private lines found. Move the plan where a line lies in the way.",
		.tools = "telephone, paint or flags",
		.caution = "Marks cover public lines only and expire. Near marks dig by hand. "
			"Smell of gas: stop, leave, call." },
	{ .title = "Strip the sod", .labour = LABOUR_SOD, .rate = "digging by hand",
		.doing = "Where paths, walls, pads and lawns come; stack it apart from soil.",
		.tools = "flat spade, barrow; hire a sod cutter for larger lawns" },
	{ .title = "Set out", .comes = ALWAYS,
		.doing = "Base line first, then offsets to every corner; square by 3-4-5 and by "
			"equal diagonals; strings on boards well outside the dig.",
		.tools = "two tapes, string, stakes, boards, line level, hammer" },
	{ .title = "Dig", .labour = LABOUR_DIGGING, .rate = "digging by hand",
		.doing = "To one formation under walls, paths and pads; topsoil on a heap of its "
			"own, it goes back into the beds.",
		.tools = "spade, pick, barrow, level; hire a small digger for more than a few days "
		"by hand",
		.caution = "Cover holes and trenches; nobody in a trench deeper than 4 feet (1.2 "
			"m). Lift with the legs, change hands often." },
	{ .title = "Haul the spoil", TAKES(GOOD_SPOIL), .labour = LABOUR_LOADING, .rate = "loading",
		.doing = "Load and take away what is not used again.",
		.tools = "barrow, boards; truck or skip",
		.caution = "A vehicle's payload: wet soil weighs more than is reckoned here." },
	{ .title = "Lay lines and sleeves", .comes = ALWAYS,
		.doing = "Anything that is to run under paths or walls, water or low voltage, is "
			"laid now, in a sleeve and at the depth that local code asks.",
		.tools = "pipe sleeves, trenching spade",
		.caution = "Wiring, plumbing and backflow are licensed practice." },
	{ .title = "Tamp the formation", .comes = WITH_BASE,
		.doing = "Rake level and tamp before any stone is spread.",
		.tools = "rake, hand tamper or hired plate compactor",
		.caution = "Compactor: feet, hearing, never over or beside marked lines." },
	{ .title = "Lay the fabric", TAKES(GOOD_FABRIC, GOOD_FABRIC_PIN),
		.doing = "Strips lapped as listed, pinned along edges and laps, without folds.",
		.tools = "knife, pins, hammer" },
	{ .title = "Lay the base", TAKES(GOOD_STONE_BASE), .labour = LABOUR_BASE,
		.rate = "a base course of 150 mm",
		.doing = "In the lifts listed with the stone, each tamped; stay a foot (300 mm) "
			"back from the fence's line until its posts stand (common practice).",
		.tools = "barrow, rake, level, straight edge; hire a plate compactor",
		.caution = "Compactor: feet, hearing, two people to lift it." },
	{ .title = "Cut the blocks", .comes = WITH_CUTS,
		.doing = "By the cut list, longest pieces first; number them by side and course.",
		.tools = "rule, square, chalk; hire a block saw with water",
		.caution = "Silica dust (wet or extraction, respirator), eyes, hearing, kickback; "
			"keep others off." },
	{ .title = "Lay the walls", TAKES(GOOD_BLOCK_WALL, GOOD_BLOCK_CAP, GOOD_ADHESIVE),
		.doing = "By the laying sheets: level the first course block by block, then course "
			"on course with adhesive; let it cure before filling.",
		.tools = "level, rubber mallet, chalk line, cartridge gun",
		.caution = "Adhesive: fresh air. What weighs over 50 pounds (23 kg): two people or "
			"a trolley." },
	{ .title = "Line and fill the beds", TAKES(GOOD_LINER, GOOD_COMPOST, GOOD_SOIL), .labour =
		LABOUR_BARROWING, .rate = "barrow up to 50 m, spread and level",
		.doing = "Line the walls, mix soil as listed, fill in layers, tread lightly, "
			"water, top up after it has settled.",
		.tools = "barrow, boards, rake, fork",
		.caution = "Gloves. By old houses have soil tested for lead before growing food." },
	{ .title = "Set the posts", TAKES(GOOD_FENCE_POST, GOOD_FENCE_CONCRETE, GOOD_FENCE_GRAVEL),
		.doing = "Holes as listed, gravel in, posts plumb and in line, concrete sloped "
			"away at the top; leave it to harden.",
		.tools = "digging bar or hired auger, level, braces, string, mixing tub",
		.caution = "Auger: two people, never near marks. Wet concrete burns skin and eyes. "
			"Cover open holes." },
	{ .title = "Hang panels and gates", TAKES(GOOD_FENCE_PANEL, GOOD_FENCE_GATE,
		GOOD_FENCE_BRACKET, GOOD_FENCE_HINGE, GOOD_FENCE_LATCH, GOOD_FENCE_BOLT),
		.doing = "Panels between posts with their gap below; gates last, true to their "
		"gaps.",
		.tools = "saw, drill, level, blocks for the gap",
		.caution = "Treated timber: mask when sawing, never burnt. Height, pools and gates "
			"for children: local code." },
	{ .title = "Set the edging", TAKES(GOOD_EDGING, GOOD_EDGING_SPIKE),
		.doing = "Along the strings, flush with the finished surface, spiked as listed.",
		.tools = "saw, hammer, string" },
	{ .title = "Lay the surface", TAKES(GOOD_STONE_FINES, GOOD_STONE_CLEAN), .labour =
		LABOUR_BARROWING, .rate = "barrow up to 50 m, spread and level",
		.doing = "Spread, rake to a fall, tamp.",
		.tools = "barrow, rake, hand tamper or hired plate compactor",
		.caution = "Compactor: feet, hearing." },
	{ .title = "Lay the lawn", TAKES(GOOD_LAWN_TOPSOIL, GOOD_TURF, GOOD_SEED),
		.doing = "Topsoil raked and rolled, turf the day it comes with joints staggered, "
			"or seed raked in; water.",
		.tools = "rake, roller, knife, boards, hose" },
	{ .title = "Mulch the beds", TAKES(GOOD_MULCH), .labour = LABOUR_BARROWING,
		.rate = "barrow up to 50 m, spread and level",
		.doing = "To the depth listed, clear of stems.",
		.tools = "barrow, rake", .caution = "Gloves." },
};
enum { ROWS = sizeof rows / sizeof *rows };

static bool takes(const struct plan_row *row, const struct item *item)
{
	for (int i = 0; i < row->good_count; i++)
		if (item->order > 0 && item->good == row->goods[i])
			return true;
	return false;
}

static struct work_step step_of(const struct plan_row *row, const struct takeoff *takeoff,
	struct arena *arena)
{
	int *items = arena_new(arena, takeoff->items.count, sizeof *items);
	struct work_step step = { .title = row->title, .doing = row->doing, .tools = row->tools,
		.caution = row->caution, .items = items, .rate = row->rate };
	double volume = 0;

	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];

		if (!takes(row, item))
			continue;
		items[step.item_count++] = (int)i;
		if (item_unit(item) != UNIT_M3)
			continue;
		volume += item->order;
		/* Each material by itself: nobody mixes them in one barrow. */
		step.barrows += loads_of(takeoff->allow, item->order, item->unit_weight).barrow;
	}
	step.hours = hours(takeoff, row->labour, volume);
	return step;
}

static bool comes_up(const struct plan_row *row, const struct takeoff *takeoff,
	const struct work_step *step)
{
	return step->item_count > 0 || step->hours > 0 || row->comes == ALWAYS ||
		(row->comes == WITH_BASE && base_volume(takeoff) > 0) ||
		(row->comes == WITH_CUTS && has_cuts(&takeoff->cuttings));
}

void work_plan(struct work *out, const struct takeoff *takeoff, struct arena *arena)
{
	struct work_step *steps = arena_new(arena, ROWS, sizeof *steps);

	*out = (struct work){ steps, 0 };
	for (int i = 0; i < ROWS; i++) {
		struct work_step step = step_of(&rows[i], takeoff, arena);

		if (comes_up(&rows[i], takeoff, &step))
			steps[out->count++] = step;
	}
}

const char *work_source(void)
{
	return "New Zealand trade labour factors";
}
