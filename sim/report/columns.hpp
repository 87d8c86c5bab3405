// The columns of a table of rows, declared once and used both to write and to read: private to report/.
#pragma once

#include <functional>
#include <string>
#include <type_traits>
#include <vector>

#include "report/hdf5_file.hpp"
#include "report/report.hpp"

/// The way to a member of a row, constant (to write) or not (to read).
#define MAYBOUGH_PLACE(member) \
    [](auto& row) -> auto& {   \
        return row.member;     \
    }

namespace maybough::report {

/// A list of columns of rows of type Row. `place` in add(...) is a generic lambda from a row to the member it means.
template <class Row>
class Columns {
  public:
    template <class Place>
    Columns& add(const std::string& name, const std::string& unit, Place place) {
        using Value = std::remove_cvref_t<decltype(place(std::declval<Row&>()))>;
        if constexpr (std::is_same_v<Value, std::string>) {
            text(
                name, [place](const Row& row) { return place(row); },
                [place](Row& row, const std::string& value) { place(row) = value; });
        } else if constexpr (std::is_same_v<Value, double>) {
            columns_.push_back({[=](Hdf5Writer& file, const std::string& table, const std::vector<Row>& rows) {
                                    std::vector<double> values;
                                    for (const Row& row : rows) values.push_back(place(row));
                                    file.column(table, name, values, unit);
                                },
                                [=](const Hdf5Reader& file, const std::string& table, std::vector<Row>& rows) {
                                    const auto values = file.numbers(table, name);
                                    rows.resize(values.size());
                                    for (std::size_t i = 0; i < values.size(); ++i) place(rows[i]) = values[i];
                                }});
        } else if constexpr (std::is_same_v<Value, Day>) {
            add(
                name, unit, [place](auto& row) -> auto& { return place(row).value; });
        } else {
            static_assert(std::is_integral_v<Value>);
            columns_.push_back({[=](Hdf5Writer& file, const std::string& table, const std::vector<Row>& rows) {
                                    std::vector<std::int64_t> values;
                                    for (const Row& row : rows) values.push_back(static_cast<std::int64_t>(place(row)));
                                    file.column(table, name, values, unit);
                                },
                                [=](const Hdf5Reader& file, const std::string& table, std::vector<Row>& rows) {
                                    const auto values = file.wholes(table, name);
                                    rows.resize(values.size());
                                    for (std::size_t i = 0; i < values.size(); ++i) {
                                        place(rows[i]) = static_cast<Value>(values[i]);
                                    }
                                }});
        }
        return *this;
    }

    /// A column of words made from a row and read back into it; without `set` it is for readers of the file only.
    Columns& text(const std::string& name, std::function<std::string(const Row&)> get,
                  std::function<void(Row&, const std::string&)> set = {}) {
        columns_.push_back({[=](Hdf5Writer& file, const std::string& table, const std::vector<Row>& rows) {
                                std::vector<std::string> values;
                                for (const Row& row : rows) values.push_back(get(row));
                                file.column(table, name, values, "text");
                            },
                            [=](const Hdf5Reader& file, const std::string& table, std::vector<Row>& rows) {
                                if (!set) return;
                                const auto values = file.texts(table, name);
                                rows.resize(values.size());
                                for (std::size_t i = 0; i < values.size(); ++i) set(rows[i], values[i]);
                            }});
        return *this;
    }

    /// Ten columns: mean, standard error, half width and ends of the 95 % interval, spreads, quantiles, seasons.
    template <class Place>
    Columns& estimate(const std::string& name, const std::string& unit, Place place) {
        add(
            name + "_mean", unit, [place](auto& row) -> auto& { return place(row).mean; });
        add(
            name + "_se", unit, [place](auto& row) -> auto& { return place(row).se; });
        add(
            name + "_half_width_95", unit, [place](auto& row) -> auto& { return place(row).half_width_95; });
        add(
            name + "_low_95", unit, [place](auto& row) -> auto& { return place(row).low_95; });
        add(
            name + "_high_95", unit, [place](auto& row) -> auto& { return place(row).high_95; });
        add(
            name + "_sd_chance", unit, [place](auto& row) -> auto& { return place(row).sd_chance; });
        add(
            name + "_sd_ignorance", unit, [place](auto& row) -> auto& { return place(row).sd_ignorance; });
        add(
            name + "_quantile_10", unit, [place](auto& row) -> auto& { return place(row).low; });
        add(
            name + "_quantile_90", unit, [place](auto& row) -> auto& { return place(row).high; });
        add(
            name + "_seasons", "1", [place](auto& row) -> auto& { return place(row).n; });
        return *this;
    }

    void write(Hdf5Writer& file, const std::string& table, const std::vector<Row>& rows) const {
        for (const Column& column : columns_) column.write(file, table, rows);
    }
    std::vector<Row> read(const Hdf5Reader& file, const std::string& table) const {
        std::vector<Row> rows;
        for (const Column& column : columns_) {
            const std::size_t before = rows.size();
            column.read(file, table, rows);
            if (before != 0 && rows.size() != before) {
                throw InputError(file.path() + ": " + table, "has columns of different lengths");
            }
        }
        return rows;
    }

  private:
    struct Column {
        std::function<void(Hdf5Writer&, const std::string&, const std::vector<Row>&)> write;
        std::function<void(const Hdf5Reader&, const std::string&, std::vector<Row>&)> read;
    };
    std::vector<Column> columns_;
};

}  // namespace maybough::report
