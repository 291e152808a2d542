#include "takeoff/fence/fencing.h"

nm fencing_ease(const struct fencing *fencing, bool at_gate)
{
	return at_gate ? (fencing->gate_post - fencing->post) / 2 : 0;
}

const struct post_hole *fencing_hole(const struct fencing *fencing, enum post_kind kind)
{
	return kind == POST_GATE ? &fencing->gate_hole : &fencing->hole;
}

const struct word heading_words[] = {
	[HEADING_RIGHT] = { .key = "right" }, [HEADING_DOWN] = { .key = "down" },
	[HEADING_LEFT] = { .key = "left" }, [HEADING_UP] = { .key = "up" },
};
static const struct word cut_words[] = {
	[CUT_LAST] = { .key = "last" }, [CUT_FIRST] = { .key = "first" },
	[CUT_ENDS] = { .key = "ends" }, [CUT_MIDDLE] = { .key = "middle" },
};
const struct word post_words[POST_KINDS] = {
	[POST_END] = { "end", NULL, "at ends" }, [POST_CORNER] = { "corner", NULL, "at corners" },
	[POST_TEE] = { "tee", NULL, "at tees" }, [POST_GATE] = { "gate", NULL, "at gates" },
	[POST_LINE] = { "line", NULL, "in line" },
};

static const struct figure leg_figures[] = {
	{ "from", NULL, NULL, FIELD(PLACE, fence_leg, on.from) },
	{ "to", NULL, NULL, FIELD(PLACE, fence_leg, on.to) },
	{ "from_m", NULL, NULL, FIELD(SPOT, fence_leg, from), .flags = ROW_KEY },
	{ "to_m", NULL, NULL, FIELD(SPOT, fence_leg, to), .flags = ROW_KEY },
	{ "length_m", "Length", NULL, FIELD(LENGTH, fence_leg, length) },
	{ "whole", NULL, NULL, FIELD(COUNT, fence_leg, whole) },
	{ "cut_m", NULL, NULL, FIELDS(LENGTHS, fence_leg, cut, cut_count) },
	{ "cut_at", NULL, NULL, FIELD(WORD, fence_leg, cut_at), .words = cut_words },
};
const struct figure_table fence_leg_table = FIGURE_TABLE(fence_leg, leg_figures);

static const struct figure gate_figures[] = {
	{ "from", NULL, NULL, FIELD(PLACE, fence_gate, on.from) },
	{ "to", NULL, NULL, FIELD(PLACE, fence_gate, on.to) },
	{ "from_m", NULL, NULL, FIELD(SPOT, fence_gate, from), .flags = ROW_KEY },
	{ "to_m", NULL, NULL, FIELD(SPOT, fence_gate, to), .flags = ROW_KEY },
	{ "length_m", "Length", NULL, FIELD(LENGTH, fence_gate, length) },
	{ NULL, NULL, "clear", FIELD(LENGTH, fence_gate, clear) },
	{ "clear_m", "Clear", NULL, FIELD(INCHES, fence_gate, clear) },
	{ "leaves", NULL, NULL, FIELD(COUNT, fence_gate, leaves) },
	{ "leaf_m", NULL, NULL, FIELD(LENGTH, fence_gate, leaf) },
};
const struct figure_table fence_gate_table = FIGURE_TABLE(fence_gate, gate_figures);

static const struct figure post_figures[] = {
	{ "kind", NULL, NULL, FIELD(WORD, fence_post, kind), .words = post_words },
	{ "at_m", NULL, NULL, FIELD(SPOT, fence_post, at), .flags = ROW_KEY },
};
const struct figure_table fence_post_table = FIGURE_TABLE(fence_post, post_figures);

static const struct figure hole_figures[] = {
	{ "across_m", NULL, NULL, FIELD(LENGTH, post_hole, across) },
	{ "depth_m", NULL, NULL, FIELD(LENGTH, post_hole, depth) },
	{ "in_ground_m", NULL, NULL, FIELD(LENGTH, post_hole, in_ground) },
	{ "concrete_m3", NULL, NULL, FIELD(VOLUME, post_hole, concrete) },
	{ "bags", NULL, NULL, FIELD(NUMBER, post_hole, bags) },
	{ "gravel_m3", NULL, NULL, FIELD(VOLUME, post_hole, gravel) },
	{ "spoil_m3", NULL, NULL, FIELD(VOLUME, post_hole, spoil) },
};
static const struct figure_table hole_table = FIGURE_TABLE(post_hole, hole_figures);

static const struct figure panel_figures[] = {
	{ "width_m", NULL, NULL, FIELD(LENGTH, fencing, panel) },
	{ "whole", NULL, NULL, FIELD(COUNT, fencing, panels_whole) },
	{ "narrower", NULL, NULL, FIELD(COUNT, fencing, panel_pieces) },
	{ "cut_up", NULL, NULL, FIELD(COUNT, fencing, panels_cut) },
	{ "bought", NULL, NULL, FIELD(COUNT, fencing, panels_bought) },
};
static const struct figure_table panel_table = FIGURE_TABLE(fencing, panel_figures);

static const struct figure leaves_figures[] = {
	{ "width_m", NULL, NULL, FIELD(LENGTH, fence_leaves, width), .flags = ROW_KEY },
	{ "count", NULL, NULL, FIELD(COUNT, fence_leaves, count) },
	{ "from_offcuts", NULL, NULL, FIELD(COUNT, fence_leaves, from_offcuts) },
};
static const struct figure_table leaves_table = FIGURE_TABLE(fence_leaves, leaves_figures);

static const struct figure figures[] = {
	{ "name", NULL, "", FIELD(TEXT, fencing, name), .flags = PANEL_TITLE | ROW_KEY },
	{ "length_m", NULL, "Length", FIELD(LENGTH, fencing, length) },
	{ "height_m", NULL, NULL, FIELD(LENGTH, fencing, height) },
	{ "section_m", NULL, NULL, FIELD(LENGTH, fencing, section) },
	{ "post_m", NULL, NULL, FIELD(LENGTH, fencing, post) },
	{ "gate_post_m", NULL, NULL, FIELD(LENGTH, fencing, gate_post) },
	{ "rails", NULL, NULL, FIELD(COUNT, fencing, rails) },
	{ NULL, NULL, "Posts", FIELD(COUNT, fencing, post_count) },
	{ "post_length_m", NULL, "Post, needed", FIELD(LENGTH, fencing, post_length) },
	{ "post_stock_m", NULL, NULL, FIELD(LENGTH, fencing, post_stock) },
	{ "hole", NULL, NULL, FIELD(OBJECT, fencing, hole), .table = &hole_table },
	{ "gate_hole", NULL, NULL, FIELD(OBJECT, fencing, gate_hole), .table = &hole_table },
	{ "panels", NULL, NULL, SAME_ROW, .table = &panel_table },
	{ NULL, NULL, "Gap, widest", FIELD(LENGTH, fencing, widest_gap), .flags = PANEL_OPTIONAL },
	{ NULL, NULL, "Panels whole", FIELD(COUNT, fencing, panels_whole) },
	{ NULL, NULL, "Panels narrower", FIELD(COUNT, fencing, panel_pieces) },
	{ NULL, NULL, "Panels cut up", FIELD(COUNT, fencing, panels_cut) },
	{ "leaves", NULL, NULL, FIELDS(ROWS, fencing, leaves, leaves_count), .table =
		&leaves_table },
	{ "legs", NULL, NULL, FIELDS(ROWS, fencing, legs, leg_count), .table = &fence_leg_table,
		.flags = JSON_LINES },
	{ "gates", NULL, "Gate", FIELDS(ROWS, fencing, gates, gate_count),
		.table = &fence_gate_table, .flags = JSON_LINES },
	{ "posts", NULL, NULL, FIELDS(ROWS, fencing, posts, post_count),
		.table = &fence_post_table, .flags = JSON_LINES },
	{ "cuts", NULL, NULL, FIELDS(CUTS, fencing, cuts, cut_count), .flags = JSON_LINES },
	{ NULL, NULL, "Hole across", FIELD(LENGTH, fencing, hole.across) },
	{ NULL, NULL, "Hole deep", FIELD(LENGTH, fencing, hole.depth) },
	{ NULL, NULL, "Bags for one", FIELD(NUMBER, fencing, hole.bags) },
};
const struct figure_table fencing_table = FIGURE_TABLE(fencing, figures);
