#include "support/geos.h"

#include <check.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>

__attribute__((format(printf, 1, 2)))
static void complain(const char *format, ...)
{
	va_list list;

	va_start(list, format);
	vfprintf(stderr, format, list);
	va_end(list);
	fputc('\n', stderr);
}

GEOSContextHandle_t geos_start(void)
{
	GEOSContextHandle_t geos = GEOS_init_r();

	GEOSContext_setErrorHandler_r(geos, complain);
	return geos;
}

void geos_end(GEOSContextHandle_t geos)
{
	GEOS_finish_r(geos);
}

void geos_free(GEOSContextHandle_t geos, GEOSGeometry *shape)
{
	GEOSGeom_destroy_r(geos, shape);
}

GEOSGeometry *geos_ring(GEOSContextHandle_t geos, const double *xy, size_t points)
{
	GEOSCoordSequence *sequence = GEOSCoordSeq_create_r(geos, (unsigned)points + 1, 2);
	GEOSGeometry *shape;

	for (size_t i = 0; i <= points; i++)
		GEOSCoordSeq_setXY_r(geos, sequence, (unsigned)i, xy[i % points * 2],
			xy[i % points * 2 + 1]);
	shape = GEOSGeom_createPolygon_r(geos, GEOSGeom_createLinearRing_r(geos, sequence), NULL,
		0);
	ck_assert_ptr_nonnull(shape);
	return shape;
}

static GEOSGeometry *box_shape(GEOSContextHandle_t geos, const struct geos_box *b)
{
	const double xy[] = { b->left, b->top, b->right, b->top, b->right, b->bottom, b->left,
		b->bottom };

	return geos_ring(geos, xy, 4);
}

GEOSGeometry *geos_union(GEOSContextHandle_t geos, const struct geos_box *boxes, size_t count)
{
	GEOSGeometry **shapes = calloc(count + 1, sizeof(void *));
	GEOSGeometry *all, *joined;

	ck_assert_ptr_nonnull(shapes);
	for (size_t i = 0; i < count; i++)
		shapes[i] = box_shape(geos, &boxes[i]);
	all = GEOSGeom_createCollection_r(geos, GEOS_MULTIPOLYGON, shapes, (unsigned)count);
	joined = GEOSUnaryUnion_r(geos, all);
	ck_assert_ptr_nonnull(joined);
	geos_free(geos, all);
	free(shapes);
	return joined;
}

double geos_area(GEOSContextHandle_t geos, const GEOSGeometry *shape)
{
	double area = 0;

	ck_assert_int_eq(GEOSArea_r(geos, shape, &area), 1);
	return area;
}

double geos_perimeter(GEOSContextHandle_t geos, const GEOSGeometry *shape)
{
	double length = 0;

	ck_assert_int_eq(GEOSLength_r(geos, shape, &length), 1);
	return length;
}

int geos_polygons(GEOSContextHandle_t geos, const GEOSGeometry *shape)
{
	return GEOSisEmpty_r(geos, shape) ? 0 : GEOSGetNumGeometries_r(geos, shape);
}

int geos_holes(GEOSContextHandle_t geos, const GEOSGeometry *shape)
{
	int holes = 0;

	for (int i = 0; i < geos_polygons(geos, shape); i++)
		holes += GEOSGetNumInteriorRings_r(geos, GEOSGetGeometryN_r(geos, shape, i));
	return holes;
}

GEOSGeometry *geos_offset(GEOSContextHandle_t geos, const GEOSGeometry *shape, double by)
{
	/* A right angle's mitre is 1.41 times the offset: 5 never cuts one off. */
	GEOSGeometry *offset = GEOSBufferWithStyle_r(geos, shape, by, 8, GEOSBUF_CAP_FLAT,
		GEOSBUF_JOIN_MITRE, 5.0);

	ck_assert_ptr_nonnull(offset);
	return offset;
}

GEOSGeometry *geos_difference(GEOSContextHandle_t geos, const GEOSGeometry *a,
	const GEOSGeometry *b)
{
	GEOSGeometry *rest = GEOSDifference_r(geos, a, b);

	ck_assert_ptr_nonnull(rest);
	return rest;
}

/* The area of what an operation made of two shapes, which is freed. */
static double area_of(GEOSContextHandle_t geos, GEOSGeometry *made)
{
	double area;

	ck_assert_ptr_nonnull(made);
	area = geos_area(geos, made);
	geos_free(geos, made);
	return area;
}

double geos_apart(GEOSContextHandle_t geos, const GEOSGeometry *a, const GEOSGeometry *b)
{
	return area_of(geos, GEOSSymDifference_r(geos, a, b));
}

double geos_apart_by(GEOSContextHandle_t geos, const GEOSGeometry *a, const GEOSGeometry *b)
{
	double distance;

	ck_assert_int_eq(GEOSDistance_r(geos, a, b, &distance), 1);
	return distance;
}

double geos_common(GEOSContextHandle_t geos, const GEOSGeometry *a, const GEOSGeometry *b)
{
	return area_of(geos, GEOSIntersection_r(geos, a, b));
}
