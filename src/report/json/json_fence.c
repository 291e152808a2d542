#include "report/json/json_fence.h"
#include "report/json/json_value.h"

static cJSON *spot(struct spot at)
{
	return json_lengths((nm[]){ at.x, at.y }, 2);
}

/* Where a leg or a gate goes: grid points of the plan, and middles of its posts. */
static cJSON *line(const struct leg *on, struct spot from, struct spot to, nm length)
{
	cJSON *row = cJSON_CreateObject();

	json_put(row, "from", json_place(on->from));
	json_put(row, "to", json_place(on->to));
	json_put(row, "from_m", spot(from));
	json_put(row, "to_m", spot(to));
	json_put(row, "length_m", json_length(length));
	return row;
}

static void print_legs(struct text *out, const struct fencing *fencing)
{
	struct json_rows rows = json_rows_open(out, "legs", " ", "\n      ");

	for (int i = 0; i < fencing->leg_count; i++) {
		const struct fence_leg *leg = &fencing->legs[i];
		cJSON *row = line(&leg->on, leg->from, leg->to, leg->length);

		json_put(row, "whole", json_count(leg->whole));
		json_put(row, "cut_m", json_lengths(leg->cut, leg->cut_count));
		json_rows_add(&rows, row);
	}
	json_rows_close(&rows);
}

static void print_gates(struct text *out, const struct fencing *fencing)
{
	struct json_rows rows = json_rows_open(out, "gates", " ", "\n      ");

	for (int i = 0; i < fencing->gate_count; i++) {
		const struct fence_gate *gate = &fencing->gates[i];
		cJSON *row = line(&gate->on, gate->from, gate->to, gate->length);

		json_put(row, "clear_m", json_length(gate->clear > 0 ? gate->clear : 0));
		json_put(row, "leaves", json_count(gate->leaves));
		json_put(row, "leaf_m", json_length(gate->leaf));
		json_rows_add(&rows, row);
	}
	json_rows_close(&rows);
}

static void print_posts(struct text *out, const struct fencing *fencing)
{
	struct json_rows rows = json_rows_open(out, "posts", " ", "\n      ");

	for (int i = 0; i < fencing->post_count; i++) {
		cJSON *row = cJSON_CreateObject();

		json_put_text(row, "kind", post_kind_word(fencing->posts[i].kind));
		json_put(row, "at_m", spot(fencing->posts[i].at));
		json_rows_add(&rows, row);
	}
	json_rows_close(&rows);
}

/* A row for each panel that is cut up. */
static void print_cuts(struct text *out, const struct fencing *fencing)
{
	struct json_rows rows = json_rows_open(out, "cuts", " ", "\n      ");

	for (int i = 0; i < fencing->cut_count; i++) {
		const struct cut *cut = &fencing->cuts[i];

		for (int64_t panel = 0; panel < cut->blocks; panel++) {
			cJSON *row = cJSON_CreateObject();

			json_put(row, "pieces_m", json_lengths(cut->pieces, cut->piece_count));
			json_rows_add(&rows, row);
		}
	}
	json_rows_close(&rows);
}

static cJSON *panels(const struct fencing *fencing)
{
	cJSON *row = cJSON_CreateObject();

	json_put(row, "width_m", json_length(fencing->panel));
	json_put(row, "whole", json_count(fencing->panels_whole));
	json_put(row, "narrower", json_count(fencing->panel_pieces));
	json_put(row, "cut_up", json_count(fencing->panels_cut));
	json_put(row, "bought", json_count(fencing->panels_whole + fencing->panels_cut));
	return row;
}

static cJSON *hole(const struct post_hole *hole)
{
	cJSON *row = cJSON_CreateObject();

	json_put(row, "across_m", json_length(hole->across));
	json_put(row, "depth_m", json_length(hole->depth));
	json_put(row, "in_ground_m", json_length(hole->in_ground));
	json_put(row, "concrete_m3", json_number(hole->concrete));
	json_put(row, "bags", json_number(hole->bags));
	json_put(row, "gravel_m3", json_number(hole->gravel));
	json_put(row, "spoil_m3", json_number(hole->spoil));
	return row;
}

static cJSON *leaves(const struct fencing *fencing)
{
	cJSON *array = cJSON_CreateArray();

	for (int i = 0; i < fencing->leaves_count; i++) {
		cJSON *row = cJSON_CreateObject();

		json_put(row, "width_m", json_length(fencing->leaves[i].width));
		json_put(row, "count", json_count(fencing->leaves[i].count));
		json_put(row, "from_offcuts", json_count(fencing->leaves[i].from_offcuts));
		cJSON_AddItemToArray(array, row);
	}
	return array;
}

static cJSON *head(const struct fencing *fencing)
{
	const struct block *fence = &fencing->fence->block;
	cJSON *row = cJSON_CreateObject();

	json_put_text(row, "name", fencing->fence->name);
	json_put(row, "length_m", json_length(fencing->length));
	json_put(row, "height_m", json_length(block_length(fence, FENCE_HEIGHT)));
	json_put(row, "section_m", json_length(block_length(fence, FENCE_SECTION)));
	json_put(row, "post_m", json_length(block_length(fence, FENCE_POST)));
	json_put(row, "post_length_m", json_length(fencing->post_length));
	json_put(row, "post_stock_m", json_length(fencing->post_stock));
	json_put(row, "hole", hole(&fencing->hole));
	json_put(row, "panels", panels(fencing));
	json_put(row, "leaves", leaves(fencing));
	return row;
}

void json_fence(struct text *out, const struct takeoff *takeoff)
{
	struct json_rows rows = json_top_open(out, "fence");

	for (int i = 0; i < takeoff->fencing_count; i++) {
		json_rows_next(&rows);
		json_print_open(out, head(&takeoff->fencings[i]));
		print_legs(out, &takeoff->fencings[i]);
		print_gates(out, &takeoff->fencings[i]);
		print_posts(out, &takeoff->fencings[i]);
		print_cuts(out, &takeoff->fencings[i]);
		text_add(out, "}");
	}
	json_top_close(&rows);
}
