# METADATA
# title: A hose end is held by a band on a fluid that allows none
# description: |
#   Bands and worm drives let go of the tail under pressure, heat or creep. They are for water and other
#   harmless liquids. Liquefied gases, gases above 2 bar, oxygen, hydrogen, steam, hot water, toxic,
#   corrosive and pressurised flammable liquids want ends that are swaged, crimped or clamped over a
#   collar. A hose whose retention the sheet leaves out is taken for an assembly made up to its class.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [band_barred]
#   needs: []
#   absent: [hoses.end_retention]
#   message: "The ends of {part} are held by: {retention}; it carries {carries}"
#   action: >-
#     Take this hose out of service. Fit one whose ends a competent maker has swaged, crimped or clamped
#     over a collar and tested as an assembly.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.connection.hose_end_only_banded

report contains {"subject": h.id, "part": h.id, "retention": h.end_retention, "carries": h.band_barred_by} if {
	some h in input.hoses
	h.band_barred
	h.end_retention in {"band", "worm-drive", "none"}
}
