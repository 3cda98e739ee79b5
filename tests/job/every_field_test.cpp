#include <algorithm>

#include <catch2/catch.hpp>

#include <ringfill/document/write.hpp>
#include <ringfill/job/description.hpp>

#include "full_job.hpp"
#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

struct FieldPlace {
    std::string path;
    const Field* field;
};

/// Every place of a field that the full job has, by the description of the format.
void list_places(std::vector<FieldPlace>& places, const Value& object, const Record& record,
                 const std::string& path) {
    for (const Field& field : record.fields) {
        const Value* value = object.find(field.name);
        if (!value)
            continue;
        const std::string own = member_path(path, field.name);
        places.push_back({own, &field});
        if (!field.record)
            continue;
        if (field.shape == Shape::list)
            for (std::size_t i = 0; i < value->list()->size(); ++i)
                list_places(places, (*value->list())[i], *field.record, element_path(own, i));
        else if (field.shape == Shape::named)
            for (const Member& member : *value->object())
                list_places(places, member.value, *field.record, member_path(own, member.name));
        else
            list_places(places, *value, *field.record, own);
    }
}

std::vector<FieldPlace> all_places(const Document& document) {
    std::vector<FieldPlace> places;
    list_places(places, document.root, job_record, "");
    return places;
}

/// The faults of the full job with another text at a path.
std::vector<Fault> faults_with(const Document& document, const std::string& path, const std::string& json) {
    const Value& old = value_at(document, path);
    std::string text = document.text;
    text.replace(old.begin, old.end - old.begin, json);
    try {
        job_from(text);
    } catch (const Faulty& faulty) {
        return faulty.faults();
    }
    return {};
}

bool has_fault_at(const std::vector<Fault>& faults, const std::string& path) {
    return std::any_of(faults.begin(), faults.end(),
                       [&](const Fault& fault) { return fault.place.path == path && fault.place.line > 0; });
}

void count_fields(std::vector<const Field*>& fields, const Record& record) {
    for (const Field& field : record.fields) {
        fields.push_back(&field);
        if (field.record)
            count_fields(fields, *field.record);
    }
}

} // namespace

TEST_CASE("the full job sets every field of the description") {
    const Document document = parse("job.json", full_job, Origin::job);
    std::vector<const Field*> fields;
    count_fields(fields, job_record);
    const auto places = all_places(document);
    for (const Field* field : fields) {
        CAPTURE(field->name);
        CHECK(std::any_of(places.begin(), places.end(),
                          [&](const FieldPlace& place) { return place.field == field; }));
    }
}

TEST_CASE("each field is read: a value of a wrong kind is a fault at its path") {
    const Document document = parse("job.json", full_job, Origin::job);
    for (const FieldPlace& place : all_places(document)) {
        CAPTURE(place.path);
        // No field takes an object and a list, so one of the two is always wrong; null always is.
        const bool takes_object = place.field->shape == Shape::named ||
                                  (place.field->shape == Shape::one && place.field->kind == Kind::object);
        CHECK(has_fault_at(faults_with(document, place.path, takes_object ? "[]" : "{}"), place.path));
        CHECK(has_fault_at(faults_with(document, place.path, "null"), place.path));
    }
}

TEST_CASE("each quantity and number is held to its range: one past it is a fault at its path") {
    const Document document = parse("job.json", full_job, Origin::job);
    std::size_t tried = 0;
    for (const FieldPlace& place : all_places(document)) {
        CAPTURE(place.path);
        if (place.field->shape != Shape::one)
            continue;
        if (place.field->kind == Kind::count || place.field->kind == Kind::number) {
            ++tried;
            CHECK(has_fault_at(faults_with(document, place.path, "-1"), place.path));
            CHECK(has_fault_at(faults_with(document, place.path, "1e9"), place.path));
        } else if (place.field->kind == Kind::length) {
            ++tried;
            CHECK(has_fault_at(faults_with(document, place.path, "\"-1 mm\""), place.path));
            CHECK(has_fault_at(faults_with(document, place.path, "\"10.001 m\""), place.path));
        } else if (place.field->kind == Kind::temperature) {
            ++tried;
            CHECK(has_fault_at(faults_with(document, place.path, "\"-61 degC\""), place.path));
            CHECK(has_fault_at(faults_with(document, place.path, "\"701 degC\""), place.path));
        }
    }
    CHECK(tried > 30);
}

TEST_CASE("a list or a named number is read element by element") {
    const Document document = parse("job.json", full_job, Origin::job);
    for (const char* path :
         {"site.near[1]", "site.residue[0]", "procedures.ears.spools[1]",
          "procedures.ears.approved.heat_input[0]", "bores[0].composition.Mn",
          "bores[0].attached[1].thickness", "bores[1].worn.stations[1].radii[2]",
          "bores[2].worn.stations[0].diameters[1]", "boring.bar_speeds[1]", "prices.wire_kg.steel/ER70S-6",
          "prices.packs.CO2 cylinder", "prices.extras.lodging"}) {
        CAPTURE(path);
        CHECK(has_fault_at(faults_with(document, path, "{}"), path));
        CHECK(faults_with(document, path, "{}").size() == 1); // and it brings no other with it
    }
}

TEST_CASE("an unknown field is a fault in every record") {
    const Document document = parse("job.json", full_job, Origin::job);
    for (const char* path :
         {"", "site", "procedures.ears", "procedures.ears.approved", "procedures.ears.approved.post_heat",
          "bores[0]", "bores[0].attached[0]", "bores[0].worn", "bores[1].worn.stations[0]",
          "bores[0].faces[0]", "bores[0].grooves[0]", "bores[0].holes[0]", "torch", "heater", "boring",
          "prices", "prices.labour", "prices.travel"}) {
        CAPTURE(path);
        std::string text = document.text;
        text.insert(value_at(document, path).begin + 1, "\"zebra\": 1, ");
        const Document spoilt = parse("job.json", text, Origin::job);
        try {
            read_job(spoilt);
            FAIL("an unknown field was taken");
        } catch (const Faulty& faulty) {
            CHECK(faulty.faults().size() == 1);
            CHECK(has_fault_at(faulty.faults(), member_path(path, "zebra")));
        }
    }
}
