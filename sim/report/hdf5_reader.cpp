// Reading HDF5 files of columns.
#include "base/base.hpp"
#include "report/hdf5_file.hpp"

namespace maybough::report {
namespace {

/// Opens for reading; what is no HDF5 file is the user's to mend.
hid_t open_file(const std::string& path) {
    H5Eset_auto2(H5E_DEFAULT, nullptr, nullptr);
    const hid_t id = H5Fopen(path.c_str(), H5F_ACC_RDONLY, H5P_DEFAULT);
    if (id < 0) throw InputError(path, "cannot be opened as a results file (HDF5)", "was it written whole?");
    return id;
}

void check(herr_t status, const std::string& place) {
    if (status < 0) throw InputError(place, "cannot be read", "the results file is damaged");
}

}  // namespace

Hdf5Reader::Hdf5Reader(const std::string& path) : path_(path), file_(open_file(path), H5Fclose, path) {}

bool Hdf5Reader::has_attribute(const std::string& name) const {
    return H5Aexists(file_.get(), name.c_str()) > 0;
}

std::string Hdf5Reader::text_attribute(const std::string& name) const {
    const std::string place = path_ + ": attribute " + name;
    if (!has_attribute(name)) throw InputError(place, "is missing", "is this a results file of maybough?");
    const Hdf5Handle attribute(H5Aopen(file_.get(), name.c_str(), H5P_DEFAULT), H5Aclose, place);
    const Hdf5Handle type(H5Aget_type(attribute.get()), H5Tclose, place);
    if (H5Tis_variable_str(type.get()) <= 0) throw InputError(place, "is no text");
    const Hdf5Handle space(H5Aget_space(attribute.get()), H5Sclose, place);
    char* text = nullptr;
    check(H5Aread(attribute.get(), type.get(), static_cast<void*>(&text)), place);
    std::string value = text == nullptr ? "" : text;
    H5Dvlen_reclaim(type.get(), space.get(), H5P_DEFAULT, static_cast<void*>(&text));
    return value;
}

std::int64_t Hdf5Reader::whole_attribute(const std::string& name) const {
    const std::string place = path_ + ": attribute " + name;
    if (!has_attribute(name)) throw InputError(place, "is missing", "is this a results file of maybough?");
    const Hdf5Handle attribute(H5Aopen(file_.get(), name.c_str(), H5P_DEFAULT), H5Aclose, place);
    std::int64_t value = 0;
    check(H5Aread(attribute.get(), H5T_NATIVE_INT64, &value), place);
    return value;
}

bool Hdf5Reader::has_column(const std::string& table, const std::string& name) const {
    // The library asks that each part of a path be looked up in turn.
    const std::string path = table + "/" + name;
    for (std::size_t end = path.find('/', 1);; end = path.find('/', end + 1)) {
        if (H5Lexists(file_.get(), path.substr(0, end).c_str(), H5P_DEFAULT) <= 0) return false;
        if (end == std::string::npos) return true;
    }
}

Hdf5Handle Hdf5Reader::open_column(const std::string& table, const std::string& name, H5T_class_t expected) const {
    const std::string place = path_ + ": " + table + "/" + name;
    if (!has_column(table, name)) throw InputError(place, "is missing", "the results file is damaged");
    Hdf5Handle data(H5Dopen2(file_.get(), (table + "/" + name).c_str(), H5P_DEFAULT), H5Dclose, place);
    const Hdf5Handle type(H5Dget_type(data.get()), H5Tclose, place);
    const Hdf5Handle space(H5Dget_space(data.get()), H5Sclose, place);
    if (H5Tget_class(type.get()) != expected || H5Sget_simple_extent_ndims(space.get()) != 1) {
        throw InputError(place, "is not of the expected type", "the results file is damaged");
    }
    return data;
}

namespace {

std::size_t rows_of(const Hdf5Handle& data, const std::string& place) {
    const Hdf5Handle space(H5Dget_space(data.get()), H5Sclose, place);
    return static_cast<std::size_t>(H5Sget_simple_extent_npoints(space.get()));
}

template <class Value>
std::vector<Value> values_of(const Hdf5Handle& data, hid_t type, const std::string& place) {
    std::vector<Value> values(rows_of(data, place));
    if (!values.empty()) check(H5Dread(data.get(), type, H5S_ALL, H5S_ALL, H5P_DEFAULT, values.data()), place);
    return values;
}

}  // namespace

std::vector<double> Hdf5Reader::numbers(const std::string& table, const std::string& name) const {
    return values_of<double>(open_column(table, name, H5T_FLOAT), H5T_NATIVE_DOUBLE, path_ + ": " + table + "/" + name);
}

std::vector<std::int64_t> Hdf5Reader::wholes(const std::string& table, const std::string& name) const {
    return values_of<std::int64_t>(open_column(table, name, H5T_INTEGER), H5T_NATIVE_INT64,
                                   path_ + ": " + table + "/" + name);
}

std::vector<std::string> Hdf5Reader::texts(const std::string& table, const std::string& name) const {
    const std::string place = path_ + ": " + table + "/" + name;
    const Hdf5Handle data = open_column(table, name, H5T_STRING);
    const Hdf5Handle type(H5Dget_type(data.get()), H5Tclose, place);
    if (H5Tis_variable_str(type.get()) != 0) throw InputError(place, "is not of the expected type");
    const std::size_t size = H5Tget_size(type.get());
    const std::size_t rows = rows_of(data, place);
    std::string block(rows * size, '\0');
    if (rows > 0) check(H5Dread(data.get(), type.get(), H5S_ALL, H5S_ALL, H5P_DEFAULT, block.data()), place);
    std::vector<std::string> texts;
    for (std::size_t i = 0; i < rows; ++i) {
        std::string text = block.substr(i * size, size);
        text.erase(text.find_last_not_of('\0') + 1);
        texts.push_back(std::move(text));
    }
    return texts;
}

}  // namespace maybough::report
