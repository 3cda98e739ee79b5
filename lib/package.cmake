# cpack -G DEB makes one Debian package of all that cmake --install lays down.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME ringfill)
set(CPACK_PACKAGE_VENDOR "the ringfill authors")
set(CPACK_PACKAGE_CONTACT "the ringfill authors <nobody@example.invalid>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "plan the weld build-up of worn bores")
set(CPACK_PACKAGE_DESCRIPTION "From one file with the worn pin bores of a machine it works out layers,
wire, gas, fuel, preheat, cuts, time and what to load into the van, with the
reason for each. It holds the program, its tables and material families, and
the C++ library.")
set(CPACK_RESOURCE_FILE_LICENSE ${CMAKE_CURRENT_SOURCE_DIR}/LICENSE)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
  OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)

set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION utils)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_COMPRESSION_TYPE xz)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# Only for those who build against the library.
set(CPACK_DEBIAN_PACKAGE_SUGGESTS "libboost1.81-dev, libboost-json1.81-dev, libfmt-dev, librange-v3-dev")
include(CPack)
