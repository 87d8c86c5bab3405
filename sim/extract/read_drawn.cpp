// Reads an extract with libosmium: areas put together from ways and relations, lines, single points.
#include <algorithm>
#include <filesystem>
#include <map>
#include <osmium/area/assembler.hpp>
#include <osmium/area/multipolygon_manager.hpp>
#include <osmium/handler/node_locations_for_ways.hpp>
#include <osmium/index/map/sparse_mem_array.hpp>
#include <osmium/io/bzip2_compression.hpp>
#include <osmium/io/gzip_compression.hpp>
#include <osmium/io/pbf_input.hpp>
#include <osmium/io/xml_input.hpp>
#include <osmium/object_pointer_collection.hpp>
#include <osmium/osm/object_comparisons.hpp>
#include <osmium/visitor.hpp>

#include "extract/extract.hpp"

namespace maybough::extract {

namespace {

using Index = osmium::index::map::SparseMemArray<osmium::unsigned_object_id_type, osmium::Location>;
using Locations = osmium::handler::NodeLocationsForWays<Index>;

const TagRule* rule_for(const osmium::TagList& tags, const std::vector<TagRule>& rules) {
    for (const TagRule& rule : rules) {
        const char* value = tags[rule.key.c_str()];
        if (value != nullptr && (rule.value == "*" || rule.value == value)) return &rule;
    }
    return nullptr;
}

std::string text_of(const osmium::TagList& tags, const char* key) {
    constexpr std::size_t longest = 80;
    return short_line(tags.get_value_by_key(key, ""), longest);
}

bool is_area_class(const std::string& becomes) {
    return becomes == "building" || becomes == "church" || becomes == "barn" ||
           std::find(habitat_names.begin(), habitat_names.end(), becomes) != habitat_names.end();
}

class Handler : public osmium::handler::Handler {
  public:
    Handler(const LandRequest& asked, Drawn& drawn) : asked_(asked), plane_(asked.centre), drawn_(drawn) {}

    void node(const osmium::Node& node) {
        const TagRule* rule = rule_for(node.tags(), asked_.rules);
        if (rule == nullptr || !node.location().valid()) return;
        if (rule->becomes != "tree" && rule->becomes != "church" && rule->becomes != "barn" && rule->becomes != "name")
            return;
        drawn_.marks.push_back({rule->becomes, text_of(node.tags(), rule->key.c_str()), text_of(node.tags(), "name"),
                                at(node.location())});
    }

    void way(const osmium::Way& way) {
        const TagRule* rule = rule_for(way.tags(), asked_.rules);
        if (rule == nullptr) return;
        const bool line = rule->becomes == "street" || rule->becomes == "stream";
        if (!line && !(way.is_closed() && is_area_class(rule->becomes))) return;
        Ring points;
        for (const osmium::NodeRef& ref : way.nodes()) {
            if (ref.location().valid()) points.push_back(at(ref.location()));
        }
        if (points.size() < 2) return;
        if (line) {
            drawn_.lines.push_back({rule->becomes, text_of(way.tags(), rule->key.c_str()), text_of(way.tags(), "name"),
                                    std::move(points)});
        } else if (way.nodes().size() == points.size()) {
            points.pop_back();
            closed_[way.id()] = {
                {rule->becomes, text_of(way.tags(), "name"), text_of(way.tags(), "start_date"), {}, 0, 0},
                std::move(points)};
        } else {
            drawn_.left.push_back("way " + std::to_string(way.id()) + ": corners missing from the extract");
        }
    }

    void area(const osmium::Area& area) {
        const TagRule* rule = rule_for(area.tags(), asked_.rules);
        if (rule == nullptr || !is_area_class(rule->becomes)) return;
        if (area.num_rings().first == 0) {
            if (!area.from_way()) {
                drawn_.left.push_back("relation " + std::to_string(area.orig_id()) +
                                      ": its rings do not close or cross each other");
            }
            return;
        }
        if (area.from_way()) closed_.erase(area.orig_id());
        Area made{rule->becomes, text_of(area.tags(), "name"), text_of(area.tags(), "start_date"), {}, 0, 0};
        for (const osmium::OuterRing& outer : area.outer_rings()) {
            Outline outline{ring(outer), {}};
            for (const osmium::InnerRing& inner : area.inner_rings(outer)) outline.holes.push_back(ring(inner));
            made.drawn_m2 += area_m2(outline);
            made.outlines.push_back(std::move(outline));
        }
        drawn_.areas.push_back(std::move(made));
    }

    /// Closed ways that gave no area cross themselves.
    void mend_rest() {
        for (auto& [id, pending] : closed_) {
            Area made = std::move(pending.area);
            made.outlines = mended_outlines(pending.ring);
            for (const Outline& outline : made.outlines) made.drawn_m2 += area_m2(outline);
            const std::string what =
                "way " + std::to_string(id) + " (" + made.becomes + (made.name.empty() ? "" : ", " + made.name) + ")";
            if (made.outlines.empty()) {
                drawn_.left.push_back(what + ": encloses nothing");
                continue;
            }
            drawn_.mended.push_back(what + ": crosses or touches itself, read as " +
                                    std::to_string(made.outlines.size()) + " outline(s)");
            drawn_.areas.push_back(std::move(made));
        }
        closed_.clear();
    }

  private:
    struct Pending {
        Area area;
        Ring ring;
    };
    Point at(const osmium::Location& location) const { return plane_.to_plane({location.lat(), location.lon()}); }
    Ring ring(const osmium::NodeRefList& nodes) const {
        Ring points;
        for (const osmium::NodeRef& ref : nodes) points.push_back(at(ref.location()));
        if (!points.empty()) points.pop_back();
        return points;
    }

    const LandRequest& asked_;
    LocalPlane plane_;
    Drawn& drawn_;
    std::map<osmium::object_id_type, Pending> closed_;
};

/// All objects of a file by kind and number: editors and web services write them in any order.
class Everything {
  public:
    explicit Everything(const std::string& file) {
        osmium::io::Reader reader{osmium::io::File{file}};
        while (osmium::memory::Buffer buffer = reader.read()) buffers_.push_back(std::move(buffer));
        reader.close();
        for (osmium::memory::Buffer& buffer : buffers_) osmium::apply(buffer, objects_);
        objects_.sort(osmium::object_order_type_id_version{});
    }
    auto begin() const { return objects_.begin(); }
    auto end() const { return objects_.end(); }

  private:
    std::vector<osmium::memory::Buffer> buffers_;
    mutable osmium::ObjectPointerCollection objects_;
};

}  // namespace

Drawn read_drawn(const LandRequest& asked) {
    check_regular_file(asked.file);
    Drawn drawn;
    try {
        const Everything all(asked.file);
        const osmium::area::AssemblerConfig how;
        osmium::area::MultipolygonManager<osmium::area::Assembler> relations{how};
        osmium::apply(all.begin(), all.end(), relations);
        relations.prepare_for_lookup();
        Index index;
        Locations locations{index};
        locations.ignore_errors();
        Handler handler{asked, drawn};
        osmium::apply(
            all.begin(), all.end(), locations, handler,
            relations.handler([&handler](osmium::memory::Buffer&& buffer) { osmium::apply(buffer, handler); }));
        handler.mend_rest();
        relations.for_each_incomplete_relation([&](const osmium::relations::RelationHandle& handle) {
            const TagRule* rule = rule_for(handle->tags(), asked.rules);
            if (rule == nullptr || !is_area_class(rule->becomes)) return;
            drawn.left.push_back("relation " + std::to_string(handle->id()) + " (" + rule->becomes +
                                 "): members missing from the extract");
        });
    } catch (const InputError&) {
        throw;
    } catch (const std::bad_alloc&) {
        throw;
    } catch (const std::exception& e) {
        throw InputError(asked.file, "cannot be read as OpenStreetMap data: " + short_line(e.what(), 120),
                         "expected .osm, .osm.gz, .osm.bz2 or .osm.pbf");
    }
    return drawn;
}

}  // namespace maybough::extract
