# METADATA
# title: A cylinder of a most toxic gas has a relief device
# description: |
#   A device that opens lets the gas off among people. US transport law bars relief devices on cylinders
#   of toxic gas or material in hazard zone A.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: reliefs
#   scope: [zone_a_cylinder]
#   needs: []
#   message: "{part}: US transport law bars a relief device on a cylinder of hazard zone A"
#   action: >-
#     Do not use this cylinder; ask the gas supplier, and check the hazard zone written in the line sheet.
#   basis:
#     - document: 49 CFR 173.301
#       edition: "CFR 2015 annual edition"
#       clause: "(f)(6)"
#       standing: published
package rules.relief.on_zone_a_cylinder

report contains {"subject": r.id, "part": r.id} if {
	some r in input.reliefs
	r.zone_a_cylinder
}
