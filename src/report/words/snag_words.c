#include "report/words/snag_words.h"

static const struct {
	const char *word, *source;
} rules[] = {
	[SNAG_WALL_JOG] = { "wall-jog",
		"Geometry: a side holds the depth of the wall round the corner and one piece." },
	[SNAG_WALL_NARROW] = { "wall-narrow",
		"Geometry: two walls and ground between them take more than two blocks' depth." },
	[SNAG_WALL_BOND] = { "wall-bond",
		"Running bond, joints a quarter of a unit apart or more: TMS 402, IRC." },
	[SNAG_WALL_HIGH] = { "wall-high",
		"Over 24 in: common practice, no published source. Over 4 ft from the footing's "
		"bottom: permit by IRC R105.2, design by an engineer; local rules are often "
		"stricter." },
	[SNAG_WALL_EMBED] = { "wall-embed",
		"A tenth of the height below ground: a block makers' association's note on small "
		"walls." },
	[SNAG_BED_THIN] = { "bed-thin", "Common practice, no published source." },
	[SNAG_CAP_NARROW] = { "cap-narrow",
		"Geometry: two caps and ground between them take more than two caps' depth." },
	[SNAG_FILL_NONE] = { "fill-none", "Arithmetic: no depth, or no part of the mix, is left." },
	[SNAG_FENCE_TIGHT] = { "fence-tight",
		"Geometry: between two posts there is their distance less a post." },
	[SNAG_FENCE_HOLE] = { "fence-hole",
		"Geometry: a square post goes into a round hole as wide as its diagonal." },
	[SNAG_MIRROR_BROKEN] = { "mirror-broken", "The plot's own mirror." },
};

const char *snag_word(enum snag_code code)
{
	return rules[code].word;
}

const char *snag_source(enum snag_code code)
{
	return rules[code].source;
}

static const char *length(const struct report *report, const struct snag *snag, int figure)
{
	return plain_length(report, snag->figures[figure]);
}

static const char *wall_high(const struct report *report, const struct snag *snag)
{
	const char *care = "", *permit = "";

	if (snag->figures[1])
		care = say(report, "The wall is %s high, over %s: ask the block's maker or an engineer.",
			length(report, snag, 0), length(report, snag, 1));
	if (snag->figures[3])
		permit = say(report, "From the bottom of its base it is %s, over %s: ask for a permit "
			"(IRC R105.2; local code may be stricter).", length(report, snag, 2),
			length(report, snag, 3));
	return say(report, "%s%s%s", care, *care && *permit ? " " : "", permit);
}

static const char *fill_none(const struct report *report, const struct snag *snag)
{
	bool is_undug = snag->kind == FILL_NONE_UNDUG;

	switch ((enum fill_none)snag->kind) {
	case FILL_NONE_UNDUG:
	case FILL_NONE_RAISED:
		return say(report, "No soil fits: the wall is %s high, freeboard takes %s, mulch %s%s%s.",
			length(report, snag, 0), length(report, snag, 1), length(report, snag, 2),
			is_undug ? " and the ground inside " : "",
			is_undug ? length(report, snag, 3) : "");
	case FILL_NONE_MIX:
		return "Nothing is dug in: the mix has no part but topsoil, which is there already.";
	case FILL_NONE_REPLACED:
		return "No soil is replaced: the depth dug over is 0.";
	case FILL_NONE_AMENDED:
		return "Nothing is dug in: the depth of the amendment is 0.";
	}
	return "";
}

const char *snag_sentence(const struct report *report, const struct snag *snag)
{
	const char *first = length(report, snag, 0), *second = length(report, snag, 1);

	switch (snag->code) {
	case SNAG_WALL_JOG:
		return say(report, "A side of %s is too short for the wall: it takes %s, the block's "
			"depth and the shortest piece.", first, second);
	case SNAG_WALL_NARROW:
		return say(report, "Too narrow for a wall on either side, each %s deep, with ground "
			"between them.", first);
	case SNAG_WALL_BOND:
		return say(report, "The courses of this side, %s long, do not bond: joints stand "
			"closer than a quarter block to those below.", first);
	case SNAG_WALL_HIGH:
		return wall_high(report, snag);
	case SNAG_WALL_EMBED:
		return say(report, "Only %s of the wall's %s stands below ground; a tenth of it is %s.",
			first, second, length(report, snag, 2));
	case SNAG_BED_THIN:
		return say(report, "Less than %s of ground between the walls.", first);
	case SNAG_CAP_NARROW:
		return say(report, "The cap, %s deep, has no room along this bed: no cap is laid out.",
			first);
	case SNAG_FILL_NONE:
		return fill_none(report, snag);
	case SNAG_FENCE_TIGHT:
		return say(report, "%s from centre to centre of these posts leave no room for %s.",
			first, snag->kind ? "a gate" : "a panel");
	case SNAG_FENCE_HOLE:
		return say(report, "A hole %s across does not take a post %s square.", first, second);
	case SNAG_MIRROR_BROKEN:
		return "This cell and its images in the mirror are not all alike.";
	}
	return "";
}
