/** A document that formulas, factors or check values come from. */
export interface Source {
  readonly title: string;
  readonly publisher: string;
  /** Edition, date or version; as exactly as it is known to us. */
  readonly edition: string;
}

/** Every source that the library cites, by the key that citations use. */
export const bibliography = {
  'faa-phak': {
    title: "Pilot's Handbook of Aeronautical Knowledge, FAA-H-8083-25",
    publisher: 'Federal Aviation Administration',
    edition: 'A and B (the locator says which)',
  },
  'faa-afh': {
    title: 'Airplane Flying Handbook, FAA-H-8083-3',
    publisher: 'Federal Aviation Administration',
    edition: 'C',
  },
  'faa-rcam': {
    title: 'Runway Condition Assessment Matrix, version for pilots',
    publisher: 'Federal Aviation Administration',
    edition: 'undated copy',
  },
  'nasa-tm-85652': {
    title: 'NASA TM-85652, on hydroplaning of pneumatic tyres',
    publisher: 'NASA',
    edition: 'as quoted by a third party',
  },
  'faa-iph': {
    title: 'Instrument Procedures Handbook, FAA-H-8083-16',
    publisher: 'Federal Aviation Administration',
    edition: 'B, 2017',
  },
  'faa-test-figures': {
    title: 'Airman knowledge test supplement figures with published answers',
    publisher: 'Federal Aviation Administration; training pages',
    edition: 'undated',
  },
  'faa-aim': {
    title: 'Aeronautical Information Manual',
    publisher: 'Federal Aviation Administration',
    edition: '2024 (the locator names another where it differs)',
  },
  'faa-150-5300-13': {
    title: 'Advisory Circular 150/5300-13, Airport Design',
    publisher: 'Federal Aviation Administration',
    edition: 'as quoted by others, undated',
  },
  'faa-8260-rnavdep': {
    title: 'Order 8260.RNAVDEP, area navigation departure procedures',
    publisher: 'Federal Aviation Administration',
    edition: 'draft of 1997, copy seen',
  },
  'faa-descent-table': {
    title: 'Table of rates of descent by path angle and ground speed, for instrument approach charts',
    publisher: 'Federal Aviation Administration',
    edition: 'as reproduced in full in a book on instrument flying of 1987',
  },
  'cfr-14-23': {
    title: '14 CFR Part 23, Airworthiness Standards: Normal Category Airplanes',
    publisher: 'United States Government',
    edition: '2024 (the locator names another where it differs)',
  },
  'sfar-23': {
    title: 'Special Federal Aviation Regulation No. 23',
    publisher: 'United States Government',
    edition: 'copy seen, undated',
  },
  'easa-cs-vla': {
    title: 'Certification Specifications for Very Light Aeroplanes, CS-VLA',
    publisher: 'EASA',
    edition: 'not seen',
  },
  'easa-cs-23': {
    title: 'Certification Specifications for Normal Category Aeroplanes, CS-23',
    publisher: 'EASA',
    edition: 'to Amendment 4, not seen',
  },
  'astm-f2245': {
    title: 'F2245, Specification for Design and Performance of a Light Sport Airplane',
    publisher: 'ASTM International',
    edition: 'not seen',
  },
  'lsa-aoi-crosswind': {
    title: 'A light-sport aircraft operating instructions, section on wind components',
    publisher: 'a light-aircraft maker',
    edition: 'undated',
  },
  'eu-965-2012': {
    title: 'Regulation (EU) No 965/2012, Annex IV Part-CAT, performance class B, with AMC and GM',
    publisher: 'European Union; EASA',
    edition: 'as retained in UK law, copy seen 2024',
  },
  'uk-leaflet': {
    title: 'Aeroplane Performance, Safety Sense Leaflet 07',
    publisher: 'UK Civil Aviation Authority',
    edition: '7c',
  },
  'icao-annex-3': {
    title: 'Annex 3, Meteorological Service for International Air Navigation',
    publisher: 'ICAO',
    edition: 'draft of Attachment C seen',
  },
  'icao-annex-14': {
    title: 'Annex 14, Aerodromes, Volume I',
    publisher: 'ICAO',
    edition: 'not seen',
  },
  'icao-8168': {
    title: 'Procedures for Air Navigation Services, Aircraft Operations, Doc 8168',
    publisher: 'ICAO',
    edition: 'Volumes I and II, extracts seen, undated',
  },
  'icao-7488': {
    title: 'Manual of the ICAO Standard Atmosphere, Doc 7488',
    publisher: 'ICAO',
    edition: 'third edition, 1993',
  },
  'iso-2533': { title: 'ISO 2533, Standard Atmosphere', publisher: 'ISO', edition: '1975, with Addendum 1:1985' },
  'us-standard-atmosphere-1976': {
    title: 'U.S. Standard Atmosphere, 1976',
    publisher: 'NOAA, NASA and United States Air Force',
    edition: '1976, figures of the main tables as printed',
  },
  'us-1976-web-tables': {
    title: 'Table of the Standard Atmosphere to 65,000 Feet, and its companion in metres',
    publisher: 'public-domain web tables of the U.S. Standard Atmosphere, 1976',
    edition: 'as seen in a public text copy',
  },
  'half-thousand-foot-table': {
    title: 'Ratios of the standard atmosphere in steps of 500 ft, table 3.6 of a text on flight',
    publisher: 'unknown',
    edition: 'undated',
  },
  'navair-00-80t-80': {
    title: 'Aerodynamics for Naval Aviators, NAVAIR 00-80T-80, standard altitude table',
    publisher: 'US Naval Air Systems Command',
    edition: 'as reprinted in a textbook',
  },
  'bolton-1980': {
    title: 'The Computation of Equivalent Potential Temperature, Monthly Weather Review 108',
    publisher: 'American Meteorological Society',
    edition: '1980',
  },
  'tetens-murray': {
    title: 'Saturation vapour pressure of Tetens (1930), with the constants of Murray (1967)',
    publisher: 'Zeitschrift für Geophysik; Journal of Applied Meteorology',
    edition: '1930 and 1967, as quoted by others',
  },
  'buck-1981': {
    title: 'New Equations for Computing Vapor Pressure and Enhancement Factor, Journal of Applied Meteorology 20',
    publisher: 'American Meteorological Society',
    edition: '1981, as quoted by others',
  },
  'buck-1996': {
    title: 'Vapour pressure equation of a hygrometer manual (A. L. Buck)',
    publisher: 'Buck Research',
    edition: '1996, as quoted by others',
  },
  'smithsonian-1951': {
    title: 'Smithsonian Meteorological Tables',
    publisher: 'Smithsonian Institution',
    edition: 'sixth revised edition, 1951, as quoted by others',
  },
  'wmo-iom-19': {
    title: 'Instruments and Observing Methods Report No. 19',
    publisher: 'World Meteorological Organization',
    edition: 'as quoted by others',
  },
  'asos-algorithm': {
    title: 'Algorithms of the Automated Surface Observing System, training page',
    publisher: 'National Weather Service',
    edition: 'undated',
  },
  'awos-algorithm': {
    title: 'Algorithm of the Automated Weather Observing System, in a public text on barometry',
    publisher: 'Federal Aviation Administration',
    edition: 'undated copy',
  },
  'nws-formulas': {
    title: 'Formulas for weather calculations',
    publisher: 'National Weather Service',
    edition: 'undated copies',
  },
  'meteorology-library-tests': {
    title: 'Documentation and unit tests of a public library for meteorology',
    publisher: 'a university consortium',
    edition: 'as seen',
  },
  'weather-station-tests': {
    title: 'Unit tests of public weather station software',
    publisher: 'none',
    edition: 'as seen',
  },
  'weather-data-tests': {
    title: 'Unit tests of public code for weather data',
    publisher: 'none',
    edition: 'as quoted by others',
  },
  'humidity-library-tests': {
    title: 'Unit tests of a public library for weather model data',
    publisher: 'a weather centre',
    edition: 'as seen',
  },
  'humid-density-table': {
    title: 'Unit test table of the density of humid air in public code',
    publisher: 'none',
    edition: 'unsourced',
  },
  'wmo-306': {
    title: 'Manual on Codes, WMO-No. 306, Volume I.1, FM 15 METAR and FM 16 SPECI',
    publisher: 'World Meteorological Organization',
    edition: 'not seen',
  },
  'wmo-8': {
    title: 'Guide to Meteorological Instruments and Methods of Observation, WMO-No. 8',
    publisher: 'World Meteorological Organization',
    edition: '2008',
  },
  'faa-glider': {
    title: 'Glider Flying Handbook, FAA-H-8083-13',
    publisher: 'Federal Aviation Administration',
    edition: 'as seen',
  },
  'nasa-rp-1046': {
    title: 'Measurement of Aircraft Speed and Altitude, NASA RP-1046',
    publisher: 'NASA',
    edition: '1980',
  },
  'compressibility-factor-table': {
    title: 'Table of the compressibility factor by pressure altitude and calibrated airspeed',
    publisher: 'course notes in flight mechanics; a public forum',
    edition: 'undated; which of the two prints which entry was not noted',
  },
  'danish-ppl-textbook': {
    title: 'A Danish textbook for the private pilot licence',
    publisher: 'unknown',
    edition: '2025',
  },
  'landing-speed-tip': {
    title: 'A training page on the approach speed in gusts',
    publisher: 'unknown',
    edition: 'undated',
  },
  'crosswind-rules-forum': {
    title: 'Posts on rules of thumb for the crosswind',
    publisher: 'public pilots forums',
    edition: 'undated',
  },
  'density-altitude-article': {
    title: 'A magazine article on altitudes, with the rule of 120 ft for each degree',
    publisher: 'Flying',
    edition: 'undated',
  },
  'comet-density-altitude': {
    title: 'A training module on density altitude',
    publisher: 'UCAR, COMET Program',
    edition: 'copy seen, p. 7.6.0',
  },
  'flight-theory-2025': {
    title: 'Flight Theory, a textbook for the private pilot licence',
    publisher: 'unknown',
    edition: '2025',
  },
  'altimetry-training-page': {
    title: 'A training page on altimetry',
    publisher: 'a flying school',
    edition: 'undated',
  },
  'ppl-question-bank': {
    title: 'Questions and answers for the private pilot licence',
    publisher: 'a training site',
    edition: 'undated',
  },
  'airspeed-forum-page': {
    title: 'A forum wiki page on airspeeds and altitudes, 14.5',
    publisher: 'a public forum',
    edition: 'undated',
  },
  'gradient-forum': {
    title: 'A post on gradients and rates of climb',
    publisher: 'a public pilots forum',
    edition: 'undated',
  },
  'descent-point-notes': {
    title: 'Professional training notes on the visual descent point',
    publisher: 'unknown',
    edition: 'undated',
  },
  wmm2025: {
    title: 'World Magnetic Model 2025: coefficients, test values and program notes',
    publisher: 'National Centers for Environmental Information (NOAA) and British Geological Survey',
    edition: 'epoch 2025.0, released 17 December 2024',
  },
  'wmm-evaluations': {
    title: 'Results of independent evaluations of the World Magnetic Model 2025 coefficients',
    publisher: 'none',
    edition: 'figures printed beside their inputs',
  },
  'navy-14342a': {
    title: 'Naval training manual 14342A, airfield markings',
    publisher: 'United States Navy',
    edition: 'undated, after NAVAIR 51-50AAA-2',
  },
  'dafif-rules': {
    title:
      'Register of environmental data codes, low end identifier of a runway: analyst rule of an aeronautical database',
    publisher: 'SEDRIS Organization',
    edition: 'as seen, undated',
  },
  'afman-15-111': {
    title: 'Surface Weather Observations, Air Force Manual 15-111',
    publisher: 'United States Air Force',
    edition: '12 March 2019',
  },
  'light-aircraft-handbook': {
    title: 'A common light-aircraft handbook, performance section',
    publisher: 'a light-aircraft maker',
    edition: 'undated, as quoted by others',
  },
  'college-climb-notes': {
    title: 'College notes on aircraft performance, time to climb with a rate that falls linearly',
    publisher: 'none',
    edition: 'undated',
  },
  'anderson-aircraft-performance': {
    title: 'Aircraft Performance and Design (J. D. Anderson), chapter 6',
    publisher: 'McGraw-Hill',
    edition: 'public copy, undated',
  },
  'anderson-introduction': {
    title: 'Introduction to Flight (J. D. Anderson), chapter 6, as given in an open textbook companion',
    publisher: 'McGraw-Hill',
    edition: 'inputs of the examples seen',
  },
  'raymer-aircraft-design': {
    title: 'Aircraft Design: A Conceptual Approach (D. P. Raymer)',
    publisher: 'AIAA',
    edition: 'not seen; each figure says how it is known',
  },
  'takeoff-course-notes': {
    title: 'Notes on the friction of the wheels in an aerospace course on take-off (W. H. Mason)',
    publisher: 'Virginia Polytechnic Institute and State University',
    edition: 'undated',
  },
  'performance-lecture-notes': {
    title: 'Lecture notes on aircraft performance, part 15, ground roll (F. H. Lutze)',
    publisher: 'Virginia Polytechnic Institute and State University',
    edition: 'undated',
  },
  'takeoff-tutorial': {
    title: 'Tutorial AER1011 of a university course, take-off run of a jet of 10 t',
    publisher: 'a university',
    edition: 'undated',
  },
  'flight-test-textbook': {
    title: 'A textbook on flight testing, ground roll',
    publisher: 'unknown',
    edition: 'equation 3.22 seen',
  },
  'flight-test-wind-note': {
    title: 'A flight test engineer on the reduction of the wind to the height of the wing',
    publisher: 'none',
    edition: 'undated',
  },
  'flight-dynamics-textbooks': {
    title: 'Textbooks on flight dynamics (Etkin; Nelson), the steady sideslip',
    publisher: 'various',
    edition: 'not seen',
  },
  'light-aeroplane-report-2007': {
    title: 'Report AE TR 2007-1 on the performance of a light aeroplane (E. G. Tulapurkara and others)',
    publisher: 'Indian Institute of Technology Madras',
    edition: '2007',
  },
  'gagg-farrar-1934': {
    title: 'Work on the altitude performance of aircraft engines (Gagg and Farrar)',
    publisher: 'SAE',
    edition: '1934, not seen',
  },
  'jcgm-100': {
    title: 'Guide to the expression of uncertainty in measurement, JCGM 100',
    publisher: 'Joint Committee for Guides in Metrology',
    edition: '2008; its equations are recalled',
  },
  'jcgm-101': {
    title: 'Propagation of distributions using a Monte Carlo method, JCGM 101',
    publisher: 'Joint Committee for Guides in Metrology',
    edition: '2008; contents read, its equations are recalled',
  },
  mathematics: { title: 'Plane trigonometry and elementary mechanics', publisher: 'none', edition: 'none' },
  'trade-practice': {
    title: 'What the trade teaches throughout, without one source',
    publisher: 'none',
    edition: 'none',
  },
  'second-computations': {
    title: 'Second computations: figures of programs written apart from the library',
    publisher: 'The groundroll authors',
    edition: 'this version; no published figures, and counted apart from those',
  },
  groundroll: {
    title: 'groundroll, documented policies and derivations',
    publisher: 'The groundroll authors',
    edition: 'this version',
  },
} as const satisfies Record<string, Source>;

/** The key of a source in the bibliography. */
export type SourceId = keyof typeof bibliography;
